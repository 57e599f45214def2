import { readFileSync } from 'node:fs';

/**
 * @param {string} path
 * @returns {unknown} what the JSON file holds; throws where it is not there or is no JSON
 */
export function readJson(path) {
  return JSON.parse(readFileSync(path, 'utf8'));
}
