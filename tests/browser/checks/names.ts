import type { Page } from 'playwright-core';

const CONTROLS = [
  'button',
  'checkbox',
  'combobox',
  'DisclosureTriangle',
  'link',
  'listbox',
  'option',
  'radio',
  'slider',
  'spinbutton',
  'switch',
  'tab',
  'textbox',
];

/** Controls that a screen reader could only call by their role, from the browser's own accessibility tree. */
export async function nameless(page: Page): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  return nodes.flatMap(({ ignored, role, name, backendDOMNodeId }) => {
    const kind = String(role?.value);
    if (ignored || !CONTROLS.includes(kind) || String(name?.value ?? '').trim() !== '') return [];
    return [`${kind} without a name (node ${backendDOMNodeId})`];
  });
}
