// Requests of which only the newest matters. A few are on their way at once; of those that wait only the newest is
// kept; an answer that comes after the answer to a newer request is never shown, and nobody waits for it any more.

/** On their way at once: the one being worked on and the next, so that the workers never wait for the page. */
const mostOnTheirWay = 2;
/** A newer request waits so long, ms; then the last of those on their way gives way to it. */
const patience_ms = 400;

export interface Lane<Request> {
  readonly request: (request: Request) => void;
}

/** A lane that asks with `ask` and hands each answer that is not late to `show`. */
export function newestWins<Request, Answer>(
  ask: (request: Request, signal: AbortSignal) => Promise<Answer>,
  show: (answer: Answer, request: Request) => void,
  failed: (error: unknown, request: Request) => void,
): Lane<Request> {
  let waiting: { readonly request: Request } | undefined;
  let giveWay: ReturnType<typeof setTimeout> | undefined;
  /** On their way, the oldest first. */
  const onTheirWay = new Map<number, AbortController>();
  let asked = 0;
  let shown = 0;

  const send = (request: Request): void => {
    asked += 1;
    const turn = asked;
    const control = new AbortController();
    onTheirWay.set(turn, control);
    const arrive = (act: () => void): void => {
      onTheirWay.delete(turn);
      const next = waiting;
      waiting = undefined;
      clearTimeout(giveWay);
      giveWay = undefined;
      if (next !== undefined) send(next.request);
      if (turn < shown || control.signal.aborted) return;
      shown = turn;
      for (const [other, late] of onTheirWay) if (other < turn) late.abort();
      act();
    };
    ask(request, control.signal).then(
      (answer) => arrive(() => show(answer, request)),
      (error: unknown) => arrive(() => failed(error, request)),
    );
  };

  return {
    request: (request) => {
      if (onTheirWay.size < mostOnTheirWay) {
        send(request);
        return;
      }
      waiting = { request };
      giveWay ??= setTimeout(() => [...onTheirWay.values()].at(-1)?.abort(), patience_ms);
    },
  };
}
