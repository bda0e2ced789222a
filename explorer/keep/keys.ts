// Keys under which this browser keeps what is open.

/** This window's notebook, so that it is found again when the window is loaded anew. */
export const windowKey = 'kettle-and-plate.open';
/** The address this window wrote last by itself. */
export const addressKey = 'kettle-and-plate.address';
/** The notebook that was open last in any window. */
export const latestKey = 'kettle-and-plate.latest';
/** Before the id of a notebook in the browser's simple storage: what earlier versions kept, and what was left before keeping
 * had loaded. */
export const keptPrefix = 'kettle-and-plate.notebook.';
