// Types of browser.mjs, which is plain JavaScript because it runs before anything else does.

/** Path of a browser the tests can drive, or undefined. */
export function findBrowser(): string | undefined;

/** Options that start the browser on a developer's machine and as root in a container alike. */
export function launchOptions(): { executablePath?: string; chromiumSandbox: boolean; args: string[] };
