// What docs/guide/hosting.md has a host send is what the explorer is built and tested with.

import { describe, expect, it } from 'vitest';
import { headers } from '../../../explorer/build/content-policy.js';
import { read } from '../../support/tree.js';

const recipe = read('docs/guide/hosting.md');

describe('the recipe for a host', () => {
  it.each(Object.entries(headers))('has the header %s as it is tested', (name, value) => {
    expect(recipe).toContain(`${name}: ${value}`);
  });

  it.each(Object.keys(headers))('has its example of a server send %s', (name) => {
    const value = name === 'Content-Security-Policy' ? '$policy' : headers[name]!;
    expect(recipe).toContain(`add_header ${name} ${value} always;`);
  });

  it('has nothing but files that are there kept for a year', () => {
    expect(recipe).toContain('add_header Cache-Control $keep;');
  });

  it('gives the order of upload twice: parts, page, service worker', () => {
    const order = /`assets\/` and the icons, then `index\.html`, then `service-worker\.js`/gu;
    expect(recipe.match(order)).toHaveLength(2);
  });

  it('has the same policy in its example of a server', () => {
    expect(recipe).toContain(`set $policy "${headers['Content-Security-Policy']!}";`);
  });
});
