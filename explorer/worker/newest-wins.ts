// Requests of which only the newest matters. A few are on their way at once; of those that wait only
// the newest is kept; an answer that comes after the answer to a newer request is never shown.

/** On their way at once: the one being worked on and the next, so that the worker never waits for the page. */
const mostOnTheirWay = 2;

export interface Lane<Request> {
  readonly request: (request: Request) => void;
}

/** A lane that asks with `ask` and hands each answer that is not late to `show`. */
export function newestWins<Request, Answer>(
  ask: (request: Request) => Promise<Answer>,
  show: (answer: Answer, request: Request) => void,
  failed: (error: unknown, request: Request) => void,
): Lane<Request> {
  let waiting: { readonly request: Request } | undefined;
  let onTheirWay = 0;
  let asked = 0;
  let shown = 0;

  const send = (request: Request): void => {
    asked += 1;
    onTheirWay += 1;
    const turn = asked;
    const arrive = (act: () => void): void => {
      onTheirWay -= 1;
      const next = waiting;
      waiting = undefined;
      if (next !== undefined) send(next.request);
      if (turn < shown) return;
      shown = turn;
      act();
    };
    ask(request).then(
      (answer) => arrive(() => show(answer, request)),
      (error: unknown) => arrive(() => failed(error, request)),
    );
  };

  return {
    request: (request) => {
      if (onTheirWay < mostOnTheirWay) send(request);
      else waiting = { request };
    },
  };
}
