// How many steps a backtracking matcher takes for a regular expression on a text. Engines that browsers use work this
// way; counting is the same on every machine. What a single character matches is asked of the real engine.

type Next = (place: number) => boolean;
type Node = (place: number, next: Next, run: Run) => boolean;

interface Run {
  readonly text: string;
  steps: number;
  readonly most: number;
}

/** A pattern taken apart. */
export interface Pattern {
  /** Each thing in it that matches one character. */
  readonly atoms: readonly Atom[];
  /** Whether anything may be repeated without end. */
  readonly unbounded: boolean;
  /** A text it is likely to match: each part once. */
  readonly example: string;
  /** Steps to look through a text for it as its flags say; more than `most` are not counted. */
  readonly steps: (text: string, most: number) => number;
}

export interface Atom {
  readonly accepts: (character: string) => boolean;
}

/** Characters that stand for all others. */
export const samples = Array.from('aAzeEhtpsvMkL09.,;:!?#*+-_=<>()[]{}/\\|&%@"\'’°\u00a0\u2009 \n\t\u0001é³−²');

/** Takes a pattern apart; throws for what it does not know. */
export function patternOf(source: string, flags: string): Pattern {
  return new Parser(source, flags).pattern();
}

class Parser {
  readonly #source: string;
  readonly #flags: string;
  readonly #atoms: Atom[] = [];
  #at = 0;
  #unbounded = false;

  constructor(source: string, flags: string) {
    this.#source = source;
    this.#flags = flags.replace(/[gyd]/gu, '');
    this.#global = flags.includes('g');
    this.#sticky = flags.includes('y');
  }
  readonly #global: boolean;
  readonly #sticky: boolean;

  pattern(): Pattern {
    const { node, example } = this.#choice();
    if (this.#at < this.#source.length) throw new Error(`‘${this.#source}’ is not understood at ${String(this.#at)}`);
    const [all, sticky] = [this.#global, this.#sticky];
    const steps = (text: string, most: number): number => {
      const run: Run = { text, steps: 0, most };
      for (let from = 0; from <= text.length && run.steps < most;) {
        let to = -1;
        const found = node(from, (place) => (to = place) >= 0, run);
        if ((found && !all) || (!found && sticky)) break;
        from = found && to > from ? to : from + 1;
      }
      return run.steps;
    };
    return { atoms: this.#atoms, unbounded: this.#unbounded, example, steps };
  }

  #choice(): Part {
    const parts = [this.#sequence()];
    while (this.#take('|')) parts.push(this.#sequence());
    const node: Node = (place, next, run) => parts.some((part) => part.node(place, next, run));
    return parts.length === 1 ? parts[0]! : { node, example: parts.map(({ example }) => example).join('') };
  }

  #sequence(): Part {
    const parts: Part[] = [];
    while (this.#at < this.#source.length && !'|)'.includes(this.#source.charAt(this.#at)))
      parts.push(this.#repeated());
    const node = parts.reduceRight<Node>(
      (rest, part) => (place, next, run) => part.node(place, (to) => rest(to, next, run), run),
      (place, next) => next(place),
    );
    return { node, example: parts.map(({ example }) => example).join('') };
  }

  #repeated(): Part {
    const part = this.#one();
    const found = /^(?:[*+?]|\{(\d+)(?:(,)(\d*))?\})/u.exec(this.#source.slice(this.#at));
    if (found === null) return part;
    const [sign, low = '0', comma, high = ''] = found;
    this.#at += sign.length;
    const lazy = this.#take('?');
    const least = sign === '+' ? 1 : Number(low);
    const most = '*+'.includes(sign)
      ? Infinity
      : sign === '?'
        ? 1
        : comma === undefined
          ? least
          : high === ''
            ? Infinity
            : Number(high);
    if (most === Infinity) this.#unbounded = true;
    const example = part.example.repeat(Math.max(1, Math.min(least, 3)));
    return { node: repeat(part.node, least, most, lazy), example };
  }

  #one(): Part {
    if (this.#take('(')) return this.#group();
    if (this.#take('^'))
      return { node: (place, next) => (place === 0 || this.#lineEdge(place - 1)) && next(place), example: '' };
    if (this.#take('$'))
      return {
        node: (place, next, { text }) => (place === text.length || this.#lineEdge(place)) && next(place),
        example: '',
      };
    const edge = /^\\[bB]/u.exec(this.#source.slice(this.#at))?.[0];
    if (edge !== undefined) {
      this.#at += 2;
      const isWord = (text: string, place: number): boolean => /^\w$/u.test(text.charAt(place));
      const at = (text: string, place: number): boolean => isWord(text, place - 1) !== isWord(text, place);
      return { node: (place, next, { text }) => at(text, place) === (edge === '\\b') && next(place), example: '' };
    }
    return this.#atom();
  }

  /** No pattern here looks at lines one by one. */
  #lineEdge(_place: number): boolean {
    if (this.#flags.includes('m')) throw new Error('The flag m is not understood');
    return false;
  }

  #group(): Part {
    const kind = /^\?(?:<?[=!]|:|<\w+>)/u.exec(this.#source.slice(this.#at))?.[0] ?? '';
    this.#at += kind.length;
    const inside = this.#choice();
    if (!this.#take(')')) throw new Error(`‘${this.#source}’: a group is not closed`);
    if (!/^\?<?[=!]$/u.test(kind)) return inside;
    const wanted = kind.endsWith('=');
    const behind = kind.includes('<');
    const node: Node = (place, next, run) => {
      const starts = behind ? Array.from({ length: place + 1 }, (_, back) => place - back).slice(0, 4) : [place];
      const holds = starts.some((start) => inside.node(start, (to) => !behind || to === place, run));
      return holds === wanted && next(place);
    };
    return { node, example: wanted && !behind ? '' : '' };
  }

  #atom(): Part {
    const rest = this.#source.slice(this.#at);
    const raw = /^(?:\[(?:\\.|[^\]\\])*\]|\\[pP]\{[^}]*\}|\\u[\da-fA-F]{4}|\\x[\da-fA-F]{2}|\\.|[^])/u.exec(rest)![0];
    if (/^\\[1-9k]/u.test(raw)) throw new Error('References back are not understood');
    this.#at += raw.length;
    const real = new RegExp(
      `^${raw}$`,
      this.#flags.includes('u') || this.#flags.includes('v') ? this.#flags : `${this.#flags}u`,
    );
    const known = new Map<string, boolean>();
    const accepts = (character: string): boolean => {
      const before = known.get(character) ?? real.test(character);
      known.set(character, before);
      return before;
    };
    this.#atoms.push({ accepts });
    const node: Node = (place, next, run) => {
      run.steps += 1;
      return run.steps < run.most && place < run.text.length && accepts(run.text.charAt(place)) && next(place + 1);
    };
    return { node, example: samples.find(accepts) ?? '' };
  }

  #take(sign: string): boolean {
    if (!this.#source.startsWith(sign, this.#at)) return false;
    this.#at += sign.length;
    return true;
  }
}

interface Part {
  readonly node: Node;
  readonly example: string;
}

function repeat(node: Node, least: number, most: number, lazy: boolean): Node {
  const from = (done: number): Node => {
    const again: Node = (place, next, run) =>
      done < most && node(place, (to) => (to > place || done < least) && from(done + 1)(to, next, run), run);
    const enough: Node = (place, next) => done >= least && next(place);
    const [first, second] = lazy ? [enough, again] : [again, enough];
    return (place, next, run) => first(place, next, run) || second(place, next, run);
  };
  return from(0);
}
