// 'What is the 96 %?': three numbers behind one saying, and how the last tenths hang on the model.

import { html, nothing } from 'lit';
import { massFractionFromMoleFraction, strengthFromMoleFraction } from '#lib/index.js';
import '../../../components/answer/kp-answer.js';
import { namedStrengths } from '../../../state/derive.js';
import { countInWords, fixed, ordinal } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import { asking, type CeilingAsks, type CeilingNow } from '../../../pages/the-ceiling/asks.js';
import type { Piece } from '../../pieces.js';
import { plainWords } from '../../plain-words.js';
import { ink, print, roundStrength } from '../../words.js';

type Asked = CeilingAsks<'stages'>;
type Now = CeilingNow<'stages'>;

/** Mole fraction of the azeotrope at 1 atm as measured. Source: Carey and Lewis, 1932. */
const measuredAzeotrope = 0.8943;

/** What people mean by '96 %'. */
export const theNinetySix: Piece<Asked> = {
  asks: asking('stages'),
  view: ({ units }, now) => ninetySixWords(now, units),
};

/** How many steps the last tenth takes: a question. */
export const lastTenth: Piece<Asked> = {
  asks: asking('stages'),
  view: ({ units }, now) => question(now, units),
  plain: ({ units }, now) => {
    const asked = tryIt(now);
    return asked === undefined ? '' : `${plainWords(leadOf(asked.from, units))} … more.`;
  },
};

/** What people mean by '96 %'. */
function ninetySixWords(now: Now, units: UnitSystem): unknown {
  const [to95, to96] = now.answers.stages.stages;
  const mass = `${fixed(100 * massFractionFromMoleFraction(measuredAzeotrope), 1)}\u00a0%`;
  const volume = `${fixed(100 * strengthFromMoleFraction(measuredAzeotrope), 1)}\u00a0%`;
  return html`<p>
      It is said that a column stops at 96 %. Measured at 1 atm, the ceiling is ${print(mass)} by <em>mass</em>, and
      that same mixture is ${print(volume)} by <em>volume</em>. What runs out near 96 % vol is not physics but push: the
      plates and the reflux of real stills. From a kettle of
      ${ink(units.strength.withUnit(now.scenario.charge.strength))}, with everything sent back, it takes
      ${stagesWords(to95)} to reach ${print(roundStrength(namedStrengths[0], units))} and ${stagesWords(to96)} to reach
      ${print(roundStrength(namedStrengths[1], units))}, the kettle counted.
    </p>
    <p>
      How many the last tenths take depends on where exactly a model puts the azeotrope. The same count with other
      equations for the same two liquids:
    </p>`;
}

function stagesWords(stages: number | null | undefined): unknown {
  if (stages === null || stages === undefined) return 'more ideal stages than there can be';
  return html`${ink(fixed(stages, 1))} ideal stages`;
}

/** The question to try, or undefined where this kettle leaves nothing to ask. */
function tryIt(now: Now): { readonly from: number; readonly more: number } | undefined {
  const [, to96, to97] = now.answers.stages.stages;
  if (to96 === null || to96 === undefined || to97 === null || to97 === undefined) return undefined;
  const from = Math.ceil(to96);
  const more = Math.ceil(to97) - from;
  return more > 0 && from > 0 ? { from, more } : undefined;
}

/** The reply to an answer: the value reached, not just right or wrong. */
function judged(
  given: number,
  asked: { readonly from: number; readonly more: number },
  ladder: readonly number[],
  units: UnitSystem,
): string {
  const { from, more } = asked;
  const reached = ladder[from + Math.round(given) - 1];
  const right = `step ${countInWords(from + more)} is the first past ${roundStrength(namedStrengths[2], units)}`;
  if (Math.round(given) === more)
    return `Yes: ${right}, at ${fixed(units.strength.toShown(ladder[from + more - 1]!), 2)}.`;
  if (reached === undefined) return `Fewer: ${right}, ${countInWords(more)} more.`;
  const stands = `${countInWords(Math.round(given))} more would stand at ${fixed(units.strength.toShown(reached), 2)}`;
  return given < more
    ? `Not yet: ${stands}. It takes ${countInWords(more)}.`
    : `Fewer will do: ${right}, ${countInWords(more)} more.`;
}

function question(now: Now, units: UnitSystem): unknown {
  const asked = tryIt(now);
  if (asked === undefined) return nothing;
  const { ladder } = now.answers.stages;
  const lead = leadOf(asked.from, units);
  return html`<kp-answer
    .lead=${lead}
    .tail=${'more.'}
    .label=${`Steps after the ${ordinal(asked.from)} until ${roundStrength(0.97, units)} is passed`}
    .subject=${now.answers.stages}
    .judge=${(given: number) => judged(given, asked, ladder, units)}
  ></kp-answer>`;
}

function leadOf(from: number, units: UnitSystem): unknown {
  return html`Step ${ink(countInWords(from))} passes ${print(roundStrength(0.96, units))} from this kettle; passing
  ${print(roundStrength(0.97, units))} takes`;
}
