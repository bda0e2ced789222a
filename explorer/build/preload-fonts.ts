// Has the browser fetch the two upright typefaces with the page instead of after its style sheet, so that words do
// not change their width once they are read.

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
