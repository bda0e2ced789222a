// Put into the page before anything of it runs: notes when inputs come, when the DOM is written, when the solver's worker is asked and
// answers, every frame and every long task. Times are the page's own clock, ms.

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
    if (records.some(({ target }) => number(target) === null)) notes.writes.push(now());
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
  globalThis.addEventListener('pointermove', (event) => notes.inputs.push(event.timeStamp), { capture: true });
  const post = globalThis.Worker.prototype.postMessage;
  const heard = new WeakSet();
  globalThis.Worker.prototype.postMessage = function postMessage(message, ...rest) {
    if (!heard.has(this)) {
      heard.add(this);
      this.addEventListener('message', ({ data }) => notes.answered.push([data?.id, now()]));
    }
    notes.asked.push([message?.id, notes.inputs.at(-1) ?? now()]);
    return post.call(this, message, ...rest);
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
