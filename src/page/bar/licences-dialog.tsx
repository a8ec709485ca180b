import { asWritten } from '../../words/said.ts';
import { useWords } from '../words.ts';
import { Dialog } from './dialog.tsx';

/** The licences of what this page is made of, which the build laid down in it. */
export function LicencesDialog({ onClose }: { readonly onClose: () => void }) {
  const words = useWords().page.bar.licences;
  const laid = document.getElementById('licences');
  const text = laid instanceof HTMLTemplateElement ? laid.content.textContent : '';
  return (
    <Dialog title={words.title} onClose={onClose}>
      <p>{words.ours}</p>
      <pre>{asWritten(text ?? '')}</pre>
    </Dialog>
  );
}
