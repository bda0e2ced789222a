// What docs/guide/hosting.md has a host send is what the explorer is built and tested with.

import { describe, expect, it } from 'vitest';
import { headers } from '../../../explorer/build/content-policy.js';
import { read } from '../../support/tree.js';

const recipe = read('docs/guide/hosting.md');

describe('the recipe for a host', () => {
  it.each(Object.entries(headers))('has the header %s as it is tested', (name, value) => {
    expect(recipe).toContain(`${name}: ${value}`);
  });

  it('has the same policy in its example of a server', () => {
    expect(recipe).toContain(`set $policy "${headers['Content-Security-Policy']!}";`);
  });
});
