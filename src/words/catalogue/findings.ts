import type { Area } from './translation.ts';

export const findings = {
} satisfies Area;
