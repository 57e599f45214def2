import type { Frame } from 'playwright';
import type { BrowserCommand } from 'vitest/node';

/** Firefox now and then loses the name of the frame of the tests, by which the test library finds it again. */
export const nameTestFrame: BrowserCommand = ({ page }) => {
  const frame = page.frames()
    .find((each) => each.parentFrame() === page.mainFrame()) as Frame & { _name: string } | undefined;
  if (frame?.name() === '') frame._name = 'vitest-iframe';
};
