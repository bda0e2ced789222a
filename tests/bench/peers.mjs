// Peers on the yardstick problem: SUNDIALS CVODE in C and scipy, on the same equations and the same table, so that times can be
// compared at equal error. Both come from Debian; as root they are installed, otherwise they are left out with a note.

import { Buffer } from 'node:buffer';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { largestDifference } from './yardstick.mjs';

/** Where the peers' sources stand. */
export const folder = fileURLToPath(new URL('peers/', import.meta.url));
const CVODE_SWEEP = ['1e-5', '1e-6', '5e-7', '3e-7', '2e-7', '1e-7', '5e-8', '3e-8', '1e-8'];
const SCIPY_SWEEP = ['1e-5', '1e-6', '3e-7', '1e-7', '3e-8'];
const SCIPY_NAMES = {
  BDF: 'scipy solve_ivp BDF',
  Radau: 'scipy solve_ivp Radau',
  LSODA: 'scipy solve_ivp LSODA',
  odeint: 'scipy odeint (LSODA)',
  'LSODA,numpy': 'scipy solve_ivp LSODA, numpy',
};

/** Rows of every peer that can be had: { name, tolerance, ms, least, error, work }; and notes on those that cannot. */
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
      compile(['-o', program, join(folder, 'cvode.c'), ...libraries]);
      for (const [weights, ...line] of lines(program, [table, '201', ...CVODE_SWEEP])) {
        const name = weights === 'ours' ? 'CVODE, C -O3, our error weights' : 'CVODE, C -O3';
        rows.push(row(name, line, reference));
      }
    });
    attempt(notes, 'scipy', ['python3-scipy', 'gcc', 'libc6-dev'], () => {
      const library = join(scratch, 'column.so');
      compile(['-shared', '-fPIC', '-x', 'c', '-o', library, join(folder, 'column.h')]);
      const script = join(folder, 'scipy_ivp.py');
      for (const [method, ...line] of lines('/usr/bin/python3', [script, library, table, '7', ...SCIPY_SWEEP])) {
        rows.push(row(SCIPY_NAMES[method], line, reference));
      }
    });
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
  return { rows, notes };
}

function row(name, [tolerance, least, median, steps, sides, ...spout], reference) {
  const error = largestDifference(Float64Array.from(spout, Number), reference);
  const work = steps === '-1' ? `${sides} sides` : `${steps} steps, ${sides} sides`;
  return { name, tolerance: Number(tolerance), ms: Number(median), least: Number(least), error, work };
}

/** Compiles a peer in C. */
export function compile(args) {
  execFileSync('cc', ['-O3', '-march=native', ...args], { stdio: 'pipe' });
}

/** What a program prints, line by line, in words. */
export function lines(program, args) {
  const options = { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 24 };
  return execFileSync(program, args, options)
    .trim()
    .split('\n')
    .map((line) => line.split(' '));
}

/** Runs `work`; where it fails and we are root on Debian, installs the packages and tries once more; else notes it. */
export function attempt(notes, name, packages, work) {
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
