// Finds a Chromium or Chrome for the browser tests and, run as a script before them, gets one where
// there is none. Plain JavaScript: it runs before anything else does.

import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { argv, env, exit, getuid, platform, stderr, stdout } from 'node:process';
import { fileURLToPath } from 'node:url';

const namesOnPath = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'msedge'];

const macPlaces = ['Google Chrome', 'Chromium', 'Microsoft Edge'].flatMap((name) =>
  ['', env.HOME ?? ''].map((home) => `${home}/Applications/${name}.app/Contents/MacOS/${name}`),
);

const windowsPlaces = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((variable) => {
  const folder = env[variable];
  if (folder === undefined) return [];
  return [
    'Google\\Chrome\\Application\\chrome.exe',
    'Chromium\\Application\\chrome.exe',
    'Microsoft\\Edge\\Application\\msedge.exe',
  ].map((place) => join(folder, place));
});

/** Path of a browser the tests can drive, or undefined. CHROMIUM, where set, is the only place looked at. */
export function findBrowser() {
  if (env.CHROMIUM) return isProgram(env.CHROMIUM) ? env.CHROMIUM : undefined;
  const suffix = platform === 'win32' ? '.exe' : '';
  const onPath = (env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => namesOnPath.map((name) => join(folder, name + suffix)));
  const usual = platform === 'darwin' ? macPlaces : platform === 'win32' ? windowsPlaces : [];
  return [...onPath, ...usual, ...playwrightsOwn()].find(isProgram);
}

/** Options that start the browser quietly on a developer's machine and as root in a container alike. */
export function launchOptions() {
  const executablePath = findBrowser();
  return {
    ...(executablePath === undefined ? {} : { executablePath }),
    chromiumSandbox: false,
    args: [
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  };
}

function playwrightsOwn() {
  try {
    return [createRequire(import.meta.url)('playwright').chromium.executablePath()];
  } catch {
    return [];
  }
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function rootOnDebian() {
  return (
    platform === 'linux' &&
    getuid?.() === 0 &&
    existsSync('/etc/os-release') &&
    /^ID=["']?debian/m.test(readFileSync('/etc/os-release', 'utf8'))
  );
}

function installBrowser() {
  if (rootOnDebian()) {
    const apt = (...words) =>
      spawnSync('apt-get', words, {
        stdio: ['ignore', stderr.fd, stderr.fd],
        env: { ...env, DEBIAN_FRONTEND: 'noninteractive' },
      });
    apt('update', '-qq');
    apt('install', '-qq', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core');
    if (findBrowser() !== undefined) return;
  }
  const cli = fileURLToPath(new URL('../../node_modules/playwright/cli.js', import.meta.url));
  spawnSync(process.execPath, [cli, 'install', '--no-shell', 'chromium'], { stdio: ['ignore', stderr.fd, stderr.fd] });
}

function versionOf(path) {
  if (platform === 'win32') return path; // Chrome for Windows opens a window instead of answering
  return execFileSync(path, ['--version'], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }).trim();
}

function main() {
  if (env.CHROMIUM && findBrowser() === undefined) {
    stderr.write(
      `The browser tests cannot run: CHROMIUM names ${env.CHROMIUM}, which is not a program that can be started.\n`,
    );
    exit(1);
  }
  if (findBrowser() === undefined) {
    stdout.write('No Chrome or Chromium found; getting one for the browser tests.\n');
    installBrowser();
  }
  const browser = findBrowser();
  if (browser === undefined) {
    stderr.write(
      'The browser tests need Chrome or Chromium and none could be installed: install one, or set CHROMIUM to its path.\n',
    );
    exit(1);
  }
  stdout.write(`Browser for the tests: ${versionOf(browser)}\n`);
}

if (argv[1] !== undefined && realpathSync(argv[1]) === fileURLToPath(import.meta.url)) main();
