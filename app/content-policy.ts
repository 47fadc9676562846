import type { Plugin } from 'vite';

/**
 * What the page may load and run: what came with it from its own origin, and nothing else. No
 * script stands in a page, no text becomes one (trusted types let through one address, the service
 * worker's), and nothing is asked of another origin.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types worker',
].join('; ');

/** Puts the policy into the built page; a development server works by what it forbids. */
export const contentPolicy = (): Plugin => ({
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
  ],
});
