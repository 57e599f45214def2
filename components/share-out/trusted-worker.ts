/** The part of the browser's trusted types that is used here. */
interface TrustedTypes {
  createPolicy(
    name: string, rules: { createScriptURL(address: string): string }
  ): { createScriptURL(address: string): unknown };
}

/** Name that a page with trusted types allows, beside the one of the templates. */
const POLICY = 'elv-load-schedule';

let trust: ((address: string) => string) | undefined;

/**
 * A worker of a file that comes with the software. A page with trusted types takes its address only by a policy, which
 * is made when it is first needed; where the page does not allow that policy, the constructor throws.
 */
export const TrustedWorker = function trustedWorker(address: URL, options: WorkerOptions): Worker {
  trust ??= policy();
  return new Worker(trust(address.href), options);
} as unknown as new (address: URL, options: WorkerOptions) => Worker;

function policy(): (address: string) => string {
  const { trustedTypes } = globalThis as { readonly trustedTypes?: TrustedTypes };
  const made = trustedTypes?.createPolicy(POLICY, { createScriptURL: (address) => address });
  // What a policy makes is no text, although every place that takes a text takes it.
  return made === undefined ? (address) => address : (address) => made.createScriptURL(address) as string;
}
