// Peers on the yardstick problem: SUNDIALS CVODE in C and scipy, on the same equations and the same table, so that times can be
// compared at equal error. Both come from Debian; as root they are installed, otherwise they are left out with a note.

import { Buffer } from 'node:buffer';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { largestDifference } from './yardstick.mjs';

const folder = fileURLToPath(new URL('peers/', import.meta.url));

/** Rows of every peer that can be had: { name, tolerance, ms, error, work }; and notes on those that cannot. */
export function peerRows(slice, reference) {
  const scratch = mkdtempSync(join(tmpdir(), 'kettle-bench-'));
  const rows = [];
  const notes = [];
  try {
    const table = join(scratch, 'table.bin');
    writeFileSync(table, Buffer.from(Float64Array.of(slice.intervals, ...slice.alpha).buffer));
    attempt(notes, 'SUNDIALS CVODE', ['libsundials-dev', 'gcc', 'libc6-dev'], () => {
      const program = join(scratch, 'cvode');
      const libraries = ['-lsundials_cvode', '-lsundials_nvecserial', '-lm'];
      execFileSync('cc', ['-O3', '-march=native', '-o', program, join(folder, 'cvode.c'), ...libraries], {
        stdio: 'pipe',
      });
      const sweep = ['1e-5', '1e-6', '3e-7', '1e-7', '3e-8', '1e-8'];
      for (const line of lines(program, [table, '101', ...sweep]))
        rows.push(row('CVODE, banded, C -O3', line, reference));
    });
    attempt(notes, 'scipy', ['python3-scipy'], () => {
      const script = join(folder, 'scipy_ivp.py');
      const sweep = ['1e-6', '1e-7', '3e-8', '1e-8'];
      for (const line of lines('/usr/bin/python3', [script, table, '5', ...sweep])) {
        const [method, ...rest] = line;
        rows.push(row(`scipy ${method}`, rest, reference));
      }
    });
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
  return { rows, notes };
}

function row(name, [tolerance, ms, steps, sides, ...spout], reference) {
  const error = largestDifference(Float64Array.from(spout, Number), reference);
  return { name, tolerance, ms: Number(ms), error, work: steps === '-1' ? `${sides} sides` : `${steps} steps` };
}

function lines(program, args) {
  const options = { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 24 };
  return execFileSync(program, args, options)
    .trim()
    .split('\n')
    .map((line) => line.split(' '));
}

/** Runs `work`; where it fails and we are root on Debian, installs the packages and tries once more; else notes it. */
function attempt(notes, name, packages, work) {
  try {
    work();
    return;
  } catch (failure) {
    if (process.getuid?.() !== 0) {
      notes.push(`${name} left out: needs ${packages.join(', ')} (${String(failure.message).split('\n')[0]})`);
      return;
    }
  }
  try {
    execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], { stdio: 'pipe' });
    work();
  } catch (failure) {
    notes.push(`${name} left out: ${String(failure.message).split('\n')[0]}`);
  }
}
