import { expect, it } from 'vitest';
import { pageHtml } from './page-html.ts';

const html = pageHtml({
  cspSource: 'https://example.test',
  nonce: 'abc123',
  script: 'https://example.test/webview.js',
  style: 'https://example.test/webview.css',
  uri: 'file:///a"><script>alert(1)</script>.slat',
});

it('allows no script but the one with the nonce, and nothing inline', () => {
  const policy = /Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'nonce-abc123'");
  expect(policy).not.toMatch(/unsafe/);
  expect(html.match(/<script/g)).toHaveLength(1);
  expect(html).not.toMatch(/<style|style=| on\w+=/);
});

it('lets no address become markup', () => {
  expect(html).toContain('data-uri="file:///a&#34;&#62;&#60;script&#62;');
});
