import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  plugins: [react()],
  build: {
    target: 'es2022',
    sourcemap: true,
    // Every asset is a file of its own: the content security policy allows no data: scripts or styles.
    assetsInlineLimit: 0,
  },
  // `npx vite client` beside a running `npm start` gives instant reload.
  server: { proxy: { '/api': 'http://127.0.0.1:4310' } },
});
