/* The page "where the numbers come from": its text is put in at the build (build/numbersTable.ts), this is its look. */
import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/stix-two-text/wght.css';
import './look/look.css';
import './look/numbers.css';
import { chooseTheme, themeChoice } from './plots/scheme.js';

chooseTheme(themeChoice.value);
