// Decides, before anything can be seen, whether this visit is set in the explorer's own typefaces or in those of the
// system: what is read never changes its face, and so never moves.

/** The faces every page begins with; the build has them fetched with the page. */
const atFirst = ["400 20px 'STIX Two Text'", "italic 400 22px 'STIX Two Text'", "400 15px 'Source Sans 3'"];

/** How long the first words may wait for their typeface, ms. */
const longest_ms = 1000;

/** Notes on <html> what was decided: 'own' where all are there in time, else 'system'. Style sheets do the rest. */
export async function decideTypefaces(): Promise<void> {
  const there = Promise.all(atFirst.map((face) => document.fonts.load(face))).then(
    (found) => found.every((faces) => faces.length > 0),
    () => false,
  );
  const late = new Promise<boolean>((resolve) => setTimeout(() => resolve(false), longest_ms));
  document.documentElement.dataset.faces = (await Promise.race([there, late])) ? 'own' : 'system';
}
