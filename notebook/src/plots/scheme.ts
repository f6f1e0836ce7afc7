import { computed, signal } from '@preact/signals';
import { palette, type Scheme } from './palette.js';

/** What a person chose: a theme, or that of the system. */
export type ThemeChoice = 'system' | Scheme;

const place = 'beamkeep-theme';
const dark = matchMedia('(prefers-color-scheme: dark)');
const systemScheme = signal<Scheme>(dark.matches ? 'dark' : 'light');
dark.addEventListener('change', () => {
  systemScheme.value = dark.matches ? 'dark' : 'light';
});

export const themeChoice = signal<ThemeChoice>(stored());

/** The theme in force. */
export const scheme = computed<Scheme>(() => (themeChoice.value === 'system' ? systemScheme.value : themeChoice.value));

/** Colours of the theme in force. */
export const colours = computed(() => palette(scheme.value));

/** Takes a theme, and keeps it for the next visit where that can be. */
export function chooseTheme(choice: ThemeChoice): void {
  themeChoice.value = choice;
  document.documentElement.setAttribute('data-theme', choice);
  try {
    localStorage.setItem(place, choice);
  } catch {
    // Without storage the choice lasts for this visit.
  }
}

function stored(): ThemeChoice {
  try {
    const choice = localStorage.getItem(place);
    return choice === 'light' || choice === 'dark' ? choice : 'system';
  } catch {
    return 'system';
  }
}
