// The content security policy of the built explorer: everything from its own address, nothing inline, nothing
// evaluated. It stands in the page, so that it holds on any host, and a host may send it as a header too.

import type { Plugin } from 'vite';
import { trustedPolicy } from '../offline/trusted-address.js';

/** What may come from where. Pictures may be made on the page (blob:), to save a figure; a font may stand in one. */
const policy: Readonly<Record<string, string>> = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'font-src': "'self' data:",
  'img-src': "'self' blob:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  // What turns text into a script or into HTML takes it only from these two: ours and the one of the templates.
  'require-trusted-types-for': "'script'",
  'trusted-types': `${trustedPolicy} lit-html`,
};

/** The policy in one line, as the page carries it. */
export const contentPolicy = Object.entries(policy)
  .map((directive) => directive.join(' '))
  .join('; ');

/** What a host may send besides; the first is the policy with the one rule that only a header can give. */
export const headers: Readonly<Record<string, string>> = {
  'Content-Security-Policy': `${contentPolicy}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  // Means something over HTTPS alone.
  'Strict-Transport-Security': 'max-age=31536000',
};

/** Puts the policy at the head of the built page; the development server has inline styles of its own. */
export function contentPolicyPlugin(): Plugin {
  return {
    name: 'content-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentPolicy },
        injectTo: 'head-prepend',
      },
    ],
  };
}
