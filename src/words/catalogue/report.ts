import type { Area } from './translation.ts';

export const report = {
} satisfies Area;
