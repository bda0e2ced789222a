// A text without its marks, for a name, a summary, or paper.

const marks = /\[\[([^\]]+)\]\]|\{\{([^}]+)\}\}|\(\(([^)]+)\)\)|\*([^*]+)\*/gu;

export function plainText(text: string): string {
  return text.replace(
    marks,
    (_whole, ...words: (string | undefined)[]) => words.slice(0, 4).find((word) => word !== undefined) ?? '',
  );
}
