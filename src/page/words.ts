import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Language } from '../words/language.ts';

/** How the page says what it shows. */
export const WordsContext = createContext<Language | undefined>(undefined);

export function useWords(): Language {
  const words = useContext(WordsContext);
  if (!words) throw new Error('a part of the page stands where there is no language');
  return words;
}
