import type { Page } from 'playwright';

/** What a page does besides what is asked of it. */
export interface Watched {
  /** Errors and warnings in the console, exceptions that nobody caught, and what the browser reports of a policy. */
  readonly faults: string[];
  /** Addresses that were asked for, in order. */
  readonly requests: string[];
}

/** Notes faults and requests of a page, from its start on and in its frames too. */
export async function watch(page: Page): Promise<Watched> {
  const watched: Watched = { faults: [], requests: [] };
  page.on('pageerror', (error) => { watched.faults.push(`${error.message}\n${error.stack ?? ''}`); });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      watched.faults.push(`${message.type()}: ${message.text()} (${message.location().url})`);
    }
  });
  page.on('request', (request) => { watched.requests.push(request.url()); });
  await page.exposeFunction('tellPolicyReport', (report: string) => { watched.faults.push(report); });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (
      { violatedDirective, blockedURI, sourceFile, lineNumber, sample }
    ) => {
      const report = `policy: ${violatedDirective} ${blockedURI} ${sourceFile}:${lineNumber} ${sample}`;
      void (window as unknown as { tellPolicyReport(report: string): Promise<void> }).tellPolicyReport(report);
    });
  });
  return watched;
}
