import { expect, test } from 'vitest';
import { mount, svgOf } from '../support/mount-picture.ts';

test('a strict security policy of the page has nothing to report', async () => {
  const reports: string[] = [];
  const note = ({ violatedDirective }: SecurityPolicyViolationEvent) => { reports.push(violatedDirective); };
  document.addEventListener('securitypolicyviolation', note);
  const policy = document.createElement('meta');
  policy.httpEquiv = 'Content-Security-Policy';
  policy.content = "style-src 'self'; img-src 'self'; require-trusted-types-for 'script'";
  document.head.append(policy);
  for (const kind of ['run', 'supplies', 'branches'] as const) {
    const { element } = await mount(kind);
    expect(getComputedStyle(svgOf(element).querySelector('.axis, .grid')!).stroke).toMatch(/^rgb/);
  }
  expect(reports).toEqual([]);
  // The policy is in force: what breaks it is reported.
  expect(() => { document.createElement('div').innerHTML = '<svg></svg>'; }).toThrow(/TrustedHTML/);
  document.removeEventListener('securitypolicyviolation', note);
});
