// What a word of the glossary is: how it is written, and one line that explains it.

export interface Term {
  /** As it is looked up: 'reflux ratio'. */
  readonly name: string;
  /** Other ways it stands in a text: 'plates', 'boils'. */
  readonly also?: readonly string[];
  /** One line, in words a beginner has. */
  readonly means: string;
}
