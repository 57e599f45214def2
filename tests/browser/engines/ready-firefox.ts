import { beforeAll } from 'vitest';
import { commands, server } from 'vitest/browser';

declare module 'vitest/browser' {
  interface BrowserCommands { nameTestFrame: () => Promise<void> }
}

// The frame of the tests is scaled, by which WebDriver BiDi takes everything in it for invisible.
beforeAll(async () => {
  if (server.browser !== 'firefox') return;
  const box = window.frameElement?.parentElement;
  if (box?.id === 'vitest-tester') box.style.transform = 'none';
  await commands.nameTestFrame();
});
