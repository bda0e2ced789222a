// The part of d3-dsv that is used here; the package comes without types.

declare module 'd3-dsv' {
  export function dsvFormat(delimiter: string): {
    readonly parseRows: (text: string) => string[][];
  };
}
