// Has the browser fetch the typefaces that every page begins with together with the page instead of after its style
// sheet: the two upright ones and the italic of the text. offline/typefaces.ts waits for them.

import type { Plugin } from 'vite';

const atFirst = /(latin-wght-normal|stix-two-text-latin-wght-italic)-[\w-]+\.woff2$/u;

export function preloadFontsPlugin(): Plugin {
  return {
    name: 'preload-fonts',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: (_html, { bundle }) =>
        Object.keys(bundle ?? {})
          .filter((file) => atFirst.test(file))
          .map((file) => ({
            tag: 'link',
            attrs: { rel: 'preload', as: 'font', type: 'font/woff2', href: `./${file}`, crossorigin: '' },
            injectTo: 'head',
          })),
    },
  };
}
