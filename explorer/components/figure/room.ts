// The room a drawing has: the width of its element on the screen, that of a book on paper. Whoever draws into it is told
// when it changes.

import type { ReactiveController, ReactiveControllerHost } from 'lit';

export interface RoomChange {
  /** Width on the screen, px; never 0. `matches` is whether the screen is as asked. */
  readonly onScreen: (width: number, matches: boolean) => void;
  /** It will be printed: what is drawn has to be drawn at once. */
  readonly onPaper: () => void;
}

export class Room implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #change: RoomChange;
  readonly #screen: MediaQueryList;
  readonly #resize = new ResizeObserver(() => this.#measure());
  #printing = false;

  constructor(host: ReactiveControllerHost & HTMLElement, screen: string, change: RoomChange) {
    this.#host = host;
    this.#change = change;
    this.#screen = matchMedia(screen);
    host.addController(this);
  }

  hostConnected(): void {
    this.#measure();
    this.#resize.observe(this.#host);
    this.#screen.addEventListener('change', this.#measure);
    addEventListener('beforeprint', this.#toPaper);
    addEventListener('afterprint', this.#toScreen);
  }

  hostDisconnected(): void {
    this.#resize.disconnect();
    this.#screen.removeEventListener('change', this.#measure);
    removeEventListener('beforeprint', this.#toPaper);
    removeEventListener('afterprint', this.#toScreen);
  }

  /** Does something while the drawing is as on paper. */
  asOnPaper<Result>(act: () => Result): Result {
    this.#toPaper();
    const result = act();
    this.#toScreen();
    return result;
  }

  readonly #measure = (): void => {
    if (this.#printing) return;
    const width = this.#host.clientWidth;
    if (width > 0) this.#change.onScreen(width, this.#screen.matches);
  };

  readonly #toPaper = (): void => {
    this.#printing = true;
    this.#change.onPaper();
  };

  readonly #toScreen = (): void => {
    this.#printing = false;
    this.#measure();
  };
}
