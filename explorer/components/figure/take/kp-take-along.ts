// <kp-take-along>: the words under a figure that save or copy it, as a picture or as numbers. Loaded when the
// reader first asks for them.

import { html, LitElement, type PropertyDeclarations } from 'lit';
import type { DataTable } from '../../../figures/figure.js';
import { copy, fileName, saveFile } from '../../hand/hand-over.js';
import { byteOrderMark, csvOf } from './csv.js';
import { type Picture, pictureOf } from './picture.js';
import { labelTypeface, pngOf } from './png.js';

/** What a figure hands over: itself at book width, and its numbers. */
export interface Taken {
  readonly description: string;
  readonly table: (fine?: boolean) => DataTable;
  /** Draws at book width while `read` looks at it, whatever the screen. */
  readonly atBookWidth: <Result>(read: (svg: SVGSVGElement) => Result) => Result;
}

export class KpTakeAlong extends LitElement {
  static override properties: PropertyDeclarations = { from: { attribute: false }, said: { state: true } };
  declare from: Taken;
  declare said: string;

  constructor() {
    super();
    this.said = '';
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    return html`<div class="words-to-press" role="group" aria-label="Take this figure along">
      ${this.#word('Save as SVG', this.#saveSvg)} ${this.#word('Save as PNG', this.#savePng)}
      ${this.#word('Save as CSV', this.#saveCsv)} ${this.#word('Copy the picture', this.#copyPicture)}
      ${this.#word('Copy the numbers', this.#copyNumbers)}
      <span class="said" role="status">${this.said}</span>
    </div>`;
  }

  #word(words: string, act: () => Promise<string>): unknown {
    const press = (): void => {
      act().then(
        (said) => (this.said = said),
        () => (this.said = 'The browser could not make it.'),
      );
    };
    return html`<button class="word-button" type="button" @click=${press}>${words}</button>`;
  }

  #picture(typeface: string): Picture {
    return this.from.atBookWidth((svg) => pictureOf(svg, this.from.description, typeface));
  }

  #save(extension: string, file: Blob): string {
    const name = fileName(this.from.table().caption.replace(/,? in numbers$/u, ''), extension);
    saveFile(name, file);
    return `Saved as ${name}.`;
  }

  readonly #saveSvg = (): Promise<string> =>
    Promise.resolve(this.#save('svg', new Blob([this.#picture('').svg], { type: 'image/svg+xml' })));

  readonly #savePng = async (): Promise<string> => this.#save('png', await pngOf(this.#picture(await labelTypeface())));

  readonly #saveCsv = (): Promise<string> =>
    Promise.resolve(
      this.#save('csv', new Blob([byteOrderMark, csvOf(this.from.table(true))], { type: 'text/csv;charset=utf-8' })),
    );

  readonly #copyPicture = async (): Promise<string> => {
    const png = labelTypeface().then((typeface) => pngOf(this.#picture(typeface)));
    return (await copy(png)) ? 'The picture is copied.' : 'The browser did not let it be copied; save it instead.';
  };

  readonly #copyNumbers = async (): Promise<string> =>
    (await copy(csvOf(this.from.table(true))))
      ? 'The numbers are copied.'
      : 'The browser did not let them be copied; save them instead.';
}

customElements.define('kp-take-along', KpTakeAlong);

declare global {
  interface HTMLElementTagNameMap {
    'kp-take-along': KpTakeAlong;
  }
}
