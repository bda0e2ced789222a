// Figures far from view keep the rows they have: a change draws what can be seen, and the rest when it
// comes near. Printing draws all.

import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How near to the window counts, in its heights above and below. */
const nearness = '50% 0px';

export class NearView implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #near = new Set<string>();
  readonly #rows = new Map<string, unknown>();
  /** Whether the page is being drawn for paper. */
  printing = false;
  #watch: IntersectionObserver | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  /** Rows of the figure marked `data-figure=name`: fresh ones where it can be seen, else those it has. */
  rows<Rows>(name: string, fresh: () => Rows): Rows {
    const has = this.#rows.get(name) as Rows | undefined;
    if (has !== undefined && !this.#near.has(name) && !this.printing) return has;
    const rows = fresh();
    this.#rows.set(name, rows);
    return rows;
  }

  hostConnected(): void {
    this.#watch = new IntersectionObserver((entries) => this.#note(entries), { rootMargin: nearness });
    addEventListener('beforeprint', this.#print);
  }

  hostDisconnected(): void {
    this.#watch?.disconnect();
    this.#near.clear();
    removeEventListener('beforeprint', this.#print);
  }

  hostUpdated(): void {
    for (const figure of this.#host.querySelectorAll('[data-figure]')) this.#watch?.observe(figure);
  }

  #note(entries: readonly IntersectionObserverEntry[]): void {
    const before = this.#near.size;
    for (const { target, isIntersecting } of entries) {
      const name = (target as HTMLElement).dataset.figure ?? '';
      if (isIntersecting) this.#near.add(name);
      else this.#near.delete(name);
    }
    if (this.#near.size > 0 || before > 0) this.#host.requestUpdate();
  }

  #print = (): void => {
    this.printing = true;
    this.#host.requestUpdate();
    (this.#host as unknown as { performUpdate(): void }).performUpdate();
    this.printing = false;
  };
}
