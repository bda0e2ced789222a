// Remembering the latest result of a pure function by the identity of its arguments.

/** `compute`, which for the same arguments as last time gives the very same result. */
export function remembered<Arguments extends readonly unknown[], Result>(
  compute: (...args: Arguments) => Result,
): (...args: Arguments) => Result {
  let last: { readonly args: Arguments; readonly result: Result } | undefined;
  return (...args) => {
    if (last?.args.every((value, index) => Object.is(value, args[index]))) return last.result;
    last = { args, result: compute(...args) };
    return last.result;
  };
}
