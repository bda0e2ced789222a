// Put into the page before anything of it runs: notes when the hand moves (the time the browser gives the move, not the one when it tells the
// page), when the DOM is written and whether that was while a move was being handled, when the solver's worker is asked and answers, every
// frame and every long task. Times are the page's own clock, ms.

/** Runs inside the page. */
export function watchPage() {
  const notes = { inputs: [], writes: [], asked: [], answered: [], frames: [], longTasks: [], firstFigure: null };
  globalThis.benchNotes = notes;
  const now = () => performance.now();
  // A number under the hand writes itself at every move; what counts is what follows from it.
  const number = (node) => {
    const { host } = node.getRootNode();
    const element = host ?? (node.nodeType === 1 ? node : node.parentElement);
    return element?.closest('kp-setup, kp-blank, kp-ruler') ?? null;
  };
  const onWrite = (records) => {
    if (records.some(({ target }) => number(target) === null)) notes.writes.push([now(), handled]);
    if (notes.firstFigure === null && globalThis.document.querySelector('main figure svg path'))
      notes.firstFigure = now();
  };
  const observer = new globalThis.MutationObserver(onWrite);
  const everything = { subtree: true, childList: true, attributes: true, characterData: true };
  observer.observe(globalThis.document, everything);
  const attach = globalThis.Element.prototype.attachShadow;
  globalThis.Element.prototype.attachShadow = function attachShadow(options) {
    const root = attach.call(this, options);
    observer.observe(root, everything);
    return root;
  };
  // The move being handled, until something else begins.
  let handled = null;
  const over = new globalThis.MessageChannel();
  over.port1.onmessage = () => (handled = null);
  const onMove = ({ timeStamp }) => {
    if (notes.inputs.at(-1) !== timeStamp) notes.inputs.push(timeStamp);
    handled = timeStamp;
    over.port2.postMessage(null);
  };
  for (const kind of ['pointerrawupdate', 'pointermove']) globalThis.addEventListener(kind, onMove, { capture: true });
  // Heard before the page hears it: what the page writes then comes after the note.
  globalThis.Worker = class extends globalThis.Worker {
    constructor(...how) {
      super(...how);
      this.addEventListener('message', ({ data }) => {
        handled = null;
        notes.answered.push([data?.id, now()]);
      });
    }

    postMessage(message, ...rest) {
      notes.asked.push([message?.id, notes.inputs.at(-1) ?? now()]);
      super.postMessage(message, ...rest);
    }
  };
  const frame = (time) => {
    notes.frames.push(time);
    globalThis.requestAnimationFrame(frame);
  };
  globalThis.requestAnimationFrame(frame);
  new globalThis.PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) notes.longTasks.push([startTime, duration]);
  }).observe({ type: 'longtask', buffered: true });
}
