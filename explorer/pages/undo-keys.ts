// The keys that undo and redo. In a field whose text is its own the browser's undoing stays; in a number, or a text
// that is kept as it is typed, they are the notebook's.

/** What a key asks for; undefined where it is not ours. */
export function undoKey(event: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (event.altKey || event.ctrlKey === event.metaKey || event.defaultPrevented) return undefined;
  const key = event.key.toLowerCase();
  const asks =
    key === 'z'
      ? event.shiftKey
        ? 'redo'
        : 'undo'
      : key === 'y' && event.ctrlKey && !event.shiftKey
        ? 'redo'
        : undefined;
  return asks !== undefined && ours(event.target) ? asks : undefined;
}

function ours(target: EventTarget | null): boolean {
  const field = target instanceof Element ? target.closest('input, textarea, [contenteditable]') : null;
  if (field === null || field.matches('[data-in-history]')) return true;
  // A number that cannot be used is a draft, and the browser's.
  return field.closest('kp-blank') !== null && field.getAttribute('aria-invalid') !== 'true';
}
