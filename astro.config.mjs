import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';

export default defineConfig({
  outDir: './dist/site',
  integrations: [mdx({ syntaxHighlight: false })],
  build: { inlineStylesheets: 'never', format: 'directory' },
  vite: { build: { assetsInlineLimit: 0 }, worker: { format: 'es' } },
  devToolbar: { enabled: false },
});
