import { existsSync } from 'node:fs';
import { findFirefox, findWebKit } from './find-other-browsers.mjs';
import { runProgram } from './run-program.mjs';

/**
 * The browsers beside Chromium in which the walk through the main job can be tested here. On a machine of continuous
 * integration, as root on Debian, what is missing is installed; elsewhere a person is told that it is left out.
 *
 * @returns {Promise<[project: string, name: string][]>} project of the tests, and name of the browser
 */
export async function provideOtherBrowsers() {
  const missing = [...findFirefox() ? [] : ['firefox-esr'], ...findWebKit() ? [] : ['webkit2gtk-driver', 'xvfb']];
  if (missing.length > 0 && process.env.CI && existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log(`\nInstalling ${missing.join(', ')} …`);
    const environment = { DEBIAN_FRONTEND: 'noninteractive' };
    const apt = (/** @type {string[]} */ ...words) => runProgram('apt-get', words, { environment });
    if (await apt('update', '-qq')) await apt('install', '-y', '-qq', '--no-install-recommends', ...missing);
  }
  /** @type {[string, string, unknown][]} */
  const browsers = [['firefox', 'Firefox', findFirefox()], ['webkit', 'WebKit', findWebKit()]];
  return browsers.flatMap(([project, name, found]) => {
    if (found) return [[project, name]];
    console.log(`\n${name} is not installed and could not be: the walk through the main job is left out there.`);
    return [];
  });
}
