import { describe, expect, it } from 'vitest';
import { holdsLockedPackages, isSupportedNode } from '../../scripts/ensure-packages.mjs';

describe('what the commands need', () => {
  it.each([
    ['18.20.4', false], ['20.18.3', false], ['20.19.0', true], ['21.7.3', false], ['22.12.0', false], ['22.13.0', true],
    ['23.11.0', false], ['24.0.0', true], ['26.1.0', true],
  ])('Node %s: supported %s', (version, supported) => {
    expect(isSupportedNode(version)).toBe(supported);
  });

  it.each([
    ['the same', { 'node_modules/a': { version: '1.0.0' } }, true],
    ['another version', { 'node_modules/a': { version: '1.0.1' } }, false],
    ['nothing', {}, false],
    ['more', { 'node_modules/a': { version: '1.0.0' }, 'node_modules/c': { version: '1.0.0' } }, true],
  ])('packages installed: %s', (_name, installed, expected) => {
    const lock = { packages: {
      '': { version: '0.1.0' },
      'node_modules/a': { version: '1.0.0' },
      'node_modules/for-another-system': { version: '2.0.0', optional: true },
    } };
    expect(holdsLockedPackages(lock, { packages: installed })).toBe(expected);
  });
});
