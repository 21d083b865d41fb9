import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { startWords } from './i18n/start.ts';
import './style/index.css';

const root = document.getElementById('root');
if (!root) throw new Error('The page has no #root.');
void startWords().then(() =>
  createRoot(root).render(
    <StrictMode>
      <App />
    </StrictMode>,
  ),
);
