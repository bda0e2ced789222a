// The jars of the run by the page's sheet.

import { html, nothing } from 'lit';
import { hoursAndMinutes } from '../../../text/format.js';
import type { Piece } from '../../pieces.js';
import { sheetAsks, sheetRun, type SheetAsks } from '../../run-sheet/asks.js';

/** A table longer than this is not read. */
const mostRows = 60;

export const jars: Piece<SheetAsks> = {
  asks: sheetAsks,
  cautions: ['spout'],
  view: ({ units }, now) => {
    const { jars: filled } = sheetRun(now);
    const { volume, strength, temperature } = units;
    if (filled.length === 0) return html`<p>Nothing has come over, so there is no jar.</p>`;
    return html`<p class="table-title"><b>Jars</b>, as they fill, counted from lighting up</p>
      <div class="wide-table" role="region" aria-label="Jars" tabindex="0">
        <table class="figures-table">
          <thead>
            <tr>
              <th scope="col">jar</th>
              <th scope="col">from, h:min</th>
              <th scope="col">to, h:min</th>
              <th scope="col">${volume.unit}</th>
              <th scope="col">${strength.unit}</th>
              <th scope="col">pure, ${volume.unit}</th>
              <th scope="col">spout, ${strength.unit}</th>
              <th scope="col">kettle, ${temperature.unit}</th>
            </tr>
          </thead>
          <tbody>
            ${filled.slice(0, mostRows).map(
              (jar, index) =>
                html`<tr>
                  <th scope="row">${index + 1}${jar.full ? '' : ', not full'}</th>
                  <td class="ink">${hoursAndMinutes(jar.from_s)}</td>
                  <td class="ink">${hoursAndMinutes(jar.to_s)}</td>
                  <td class="ink">${volume.text(jar.volume_m3)}</td>
                  <td class="ink">${strength.text(jar.strength)}</td>
                  <td class="ink">${volume.text(jar.pureAlcohol_m3)}</td>
                  <td class="ink">${strength.text(jar.spoutFrom)} – ${strength.text(jar.spoutTo)}</td>
                  <td class="ink">${temperature.text(jar.kettleTo_K)}</td>
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      ${
        filled.length > mostRows
          ? html`<p>${filled.length - mostRows} more jars follow; larger jars make a shorter table.</p>`
          : nothing
      }`;
  },
};
