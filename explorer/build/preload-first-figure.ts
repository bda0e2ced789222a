// The first figure in few fetches: what nearly every page needs for it is one file of the build, and the browser is told to
// fetch that file together with the entry script, not when the entry script finds out about it.

import type { Plugin } from 'vite';

/** Modules without which hardly a first figure is drawn; what they import comes with them. */
const wanted =
  /\/explorer\/(pages\/entries-page|entries\/(setup|figure)\/kind|entries\/figure\/pieces\/run|pages\/the-ceiling\/record)\.ts$/u;
/** What the entry script imports itself. */
const atStart =
  /\/node_modules\/(lit|lit-html|lit-element|@lit)\/|\/explorer\/(components\/frame\/|keep\/(format|keys|numbers|when|write-file)\.|pages\/(registry|open-pages|refused-act|undo-keys)|entries\/registry|state\/(acts|address|history|limits|notebook|notebook-record|own-stills-check|parameters|record-size|run-sheet-check|shared-values|store|within-limits)\.|offline\/(load-part|wanted|start-worker|typefaces)|text\/unit-systems|worker\/solver-client)/u;

/** What every lesson of the course is made of. */
const inLessons = /\/explorer\/(pages\/course\/(lessons|records)|entries\/(text|lesson|guess|question)\/kind)\.ts$/u;

const name = 'first-figure';

/** Files the build is asked to make of these modules, each with what it imports; the rest is split as usual. */
export const firstFiles = [
  { name: 'frame', test: atStart, priority: 2 },
  { name, test: wanted, priority: 1 },
  { name: 'course', test: inLessons, priority: 0 },
  { name: 'observable-plot', test: /\/node_modules\/@observablehq\/plot\//u, priority: 0 },
];

export function preloadFirstFigurePlugin(): Plugin {
  return {
    name: 'preload-first-figure',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: (_html, { bundle }) => {
        const file = Object.values(bundle ?? {}).find((one) => one.type === 'chunk' && one.name === name)?.fileName;
        if (file === undefined) throw new Error(`The build made no file called ${name}`);
        return [{ tag: 'link', attrs: { rel: 'modulepreload', href: `./${file}`, crossorigin: '' }, injectTo: 'head' }];
      },
    },
  };
}
