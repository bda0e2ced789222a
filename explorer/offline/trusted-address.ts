// The one place that vouches for the address of a script: browsers that know Trusted Types start workers from no
// other, since the content policy asks for it.

/** As much of Trusted Types as is used here; not every browser, and not this TypeScript, knows them. */
interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ): { createScriptURL(address: string): string };
}

/** Name of our policy, in the content policy too. */
export const trustedPolicy = 'kettle-and-plate';

const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };

const checked = trustedTypes?.createPolicy(trustedPolicy, { createScriptURL: ownAddress });

/** An address of a script of the explorer, as a browser wants it; anything from elsewhere is refused. */
export function trustedAddress(address: string): string {
  return checked === undefined ? ownAddress(address) : checked.createScriptURL(address);
}

function ownAddress(address: string): string {
  const { origin, protocol } = new URL(address, location.href);
  if (origin !== location.origin || !protocol.startsWith('http'))
    throw new Error(`A script from elsewhere is not started: ${address}`);
  return address;
}
