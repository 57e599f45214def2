import type { Cells } from '../../schedule/index.ts';

/** «LED strip 4.8 W/m», «Lichtband, je Meter»; in a description also «One metre of LED strip». */
const PER_METRE = /\/\s*(?:m|lfm|ml)\b|\b(?:per|je|pro|par|au) (?:metre|meter|mètre|m)\b/i;
const ONE_METRE = /^\s*(?:one|1|ein|un) (?:metre|meter|mètre|m)\b/i;
const CABLE = /cable|kabel|leitung|câble/i;

/** Whether a device type is counted by the metre, as its name or its description says. */
export function isPerMetre({ type, description }: Cells): boolean {
  const [name, about] = [String(type ?? ''), String(description ?? '')];
  return PER_METRE.test(name) || PER_METRE.test(about) || ONE_METRE.test(about);
}

/** Whether a device type that is counted by the metre is a cable, of which more is bought than drawings show. */
export function isCable({ type, description }: Cells): boolean {
  return CABLE.test(`${String(type ?? '')} ${String(description ?? '')}`);
}
