// Whether a leader looks on, for this visit and all pages; and what is being printed: a sheet to write on, or the
// same with answers. Neither belongs to a notebook.

/** What is printed. */
export type Paper = 'worksheet' | 'answers';

const key = 'kettle-and-plate.leader';

/** Whether answers and notes for a leader are shown. */
export function leaderLooksOn(): boolean {
  const paper = paperWanted();
  if (paper !== null) return paper === 'answers';
  try {
    return sessionStorage.getItem(key) === 'yes';
  } catch {
    return false; // storage may be forbidden; the view then stays an apprentice's
  }
}

export function setLeaderLooksOn(looks: boolean): void {
  try {
    sessionStorage.setItem(key, looks ? 'yes' : 'no');
  } catch {
    // storage may be forbidden
  }
}

/** What is being printed; null while nothing is. */
export function paperWanted(): Paper | null {
  const { paper } = document.documentElement.dataset;
  return paper === 'worksheet' || paper === 'answers' ? paper : null;
}

/** Draws the page as it is wanted on paper, prints it, and puts it back. */
export async function printAs(paper: Paper, redraw: () => void): Promise<void> {
  document.documentElement.dataset.paper = paper;
  redraw();
  await nextFrame();
  await nextFrame();
  print();
  delete document.documentElement.dataset.paper;
  redraw();
}

function nextFrame(): Promise<unknown> {
  return new Promise((resolve) => requestAnimationFrame(resolve));
}
