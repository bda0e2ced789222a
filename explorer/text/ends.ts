// What stands at the end of a text and says nothing. One walk from the end: a pattern such as /0+$/ begins again at
// each zero on the way.

/** `text` without the letters of `ends` at its end. */
export function withoutEnd(text: string, ends: string): string {
  let to = text.length;
  while (to > 0 && ends.includes(text.charAt(to - 1))) to -= 1;
  return text.slice(0, to);
}

/** A decimal without the zeros at its end, nor the mark they stood behind. */
export function withoutZeros(digits: string): string {
  const short = withoutEnd(digits, '0');
  return '.,'.includes(short.charAt(short.length - 1)) ? short.slice(0, -1) : short;
}
