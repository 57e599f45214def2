import { describe, expect, it } from 'vitest';
import { browserPaths, findBrowser } from '../../src/cli/find-browser.mjs';

describe('the browser of the tests', () => {
  it('is the one that a person names, before any other', () => {
    const environment = { BROWSER_PATH: '/home/tester/browser', PATH: '/usr/bin' };
    expect(findBrowser({ platform: 'linux', environment, exists: () => true })).toBe('/home/tester/browser');
  });

  it('is refused, not replaced, where the named one is not there', () => {
    const exists = (path: string) => path === '/usr/bin/chromium';
    expect(() => findBrowser({ platform: 'linux', environment: { BROWSER_PATH: '/nowhere' }, exists }))
      .toThrow('BROWSER_PATH names "/nowhere"');
  });

  it('is an installed one: Chromium before Chrome before Edge', () => {
    const installed = new Set(['/usr/bin/microsoft-edge', '/opt/tools/google-chrome', '/usr/bin/chromium']);
    const find = () => findBrowser({
      platform: 'linux', environment: { PATH: '/opt/tools:/usr/bin' }, exists: (path) => installed.has(path),
    });
    for (const expected of ['/usr/bin/chromium', '/opt/tools/google-chrome', '/usr/bin/microsoft-edge']) {
      expect(find()).toBe(expected);
      installed.delete(expected);
    }
    expect(find()).toBeUndefined();
  });

  it('is looked for in the usual places of each system', () => {
    expect(browserPaths('darwin', { HOME: '/Users/tester' }))
      .toContain('/Users/tester/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
    expect(browserPaths('win32', { 'PROGRAMFILES(X86)': 'C:\\Program Files (x86)' }))
      .toContain('C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe');
  });
});
