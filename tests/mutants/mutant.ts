// A mutant: one small wrong change of the code that some test has to notice. It is expressed by the text it changes,
// which must stand in its file once, so that a mutant nobody has looked after is found out (tests/house/mutants.test.ts).

export interface Mutant {
  /** What goes wrong, as a reader of the code would say it. */
  readonly name: string;
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Parts of paths of the tests that should notice; where none does, all tests in Node are asked. */
  readonly tests: readonly string[];
  /** Why no test can notice, where that is so; a mutant without a reason has to be noticed. */
  readonly survives?: string;
}
