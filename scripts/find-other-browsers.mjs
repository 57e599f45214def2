import { existsSync } from 'node:fs';
import path from 'node:path';

/** Where Debian and its like put the browser that WebKit's driver starts, by the processor's triplet. */
const webKitFolders = ['x86_64-linux-gnu', 'aarch64-linux-gnu'].flatMap((triplet) =>
  ['webkit2gtk-4.1', 'webkitgtk-6.0', 'webkit2gtk-4.0'].map((folder) => `/usr/lib/${triplet}/${folder}`));

/**
 * An installed Firefox of the system, which the test driver steers by WebDriver BiDi.
 *
 * @param {(path: string) => boolean} [exists]
 * @returns {string | undefined} its path
 */
export function findFirefox(exists = existsSync) {
  return process.env.FIREFOX_PATH ?? ['/usr/bin/firefox-esr', '/usr/bin/firefox',
    '/Applications/Firefox.app/Contents/MacOS/firefox', 'C:\\Program Files\\Mozilla Firefox\\firefox.exe'].find(exists);
}

/**
 * WebKitGTK with the driver that steers it, and the display without a screen that it needs.
 *
 * @param {(path: string) => boolean} [exists]
 * @returns {{ browser: string, driver: string, display: string } | undefined} paths of the three programs
 */
export function findWebKit(exists = existsSync) {
  const browser = webKitFolders.map((folder) => path.posix.join(folder, 'MiniBrowser')).find(exists);
  const [driver, display] = ['/usr/bin/WebKitWebDriver', '/usr/bin/Xvfb'];
  return browser !== undefined && exists(driver) && exists(display) ? { browser, driver, display } : undefined;
}
