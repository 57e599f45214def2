import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';

const root = new URL('../..', import.meta.url);

/** Runs the command as a person does; a shell lets Windows find npm. */
function table(words: string) {
  return spawnSync(`npm run -s table -- ${words}`, { cwd: root, shell: true, encoding: 'utf8', maxBuffer: 1 << 26 });
}

describe('npm run -s table', () => {
  it('writes nothing but the result to its output', () => {
    const { status, stdout } = table('data/demo.schedule.json --format json');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ details: { panel: expect.any(String) as string } });
  });

  it('exits with 1 as the demo is over its limits', () => {
    const { status, stderr } = table('data/demo.schedule.json --check --sheet supplies --format csv');
    expect(status).toBe(1);
    expect(stderr).toContain('over: supplies');
  });

  it('exits with 2 for a file that is not there, and says so', () => {
    expect(table('nowhere.schedule.json')).toMatchObject({
      status: 2, stdout: '', stderr: 'nowhere.schedule.json: there is no such file. Check the name and the folder.\n',
    });
  });
});
