// The layout of a notebook's file for other programs: docs/notebook-file.schema.json says what the explorer checks.

import { toJsonSchema } from '@valibot/to-json-schema';
import { describe, expect, it } from 'vitest';
import { version3 } from '../../../explorer/keep/schema.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import { octoberWash } from './notebooks.js';

const schema = {
  title: 'A notebook of Kettle & Plate, version 3 of the format',
  ...toJsonSchema(version3, { errorMode: 'ignore' }),
};

describe('docs/notebook-file.schema.json', () => {
  it('is made from the schema that files are checked with', async () => {
    const path = '../../../docs/notebook-file.schema.json';
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(path);
  });

  it('names each field that a file has', () => {
    const file = JSON.parse(notebookFile(octoberWash, new Date(0))) as object;
    expect(Object.keys(schema.properties ?? {})).toEqual(Object.keys(file));
  });
});
