import type { Palette } from './palette.js';
import { palette } from './palette.js';
import { config, type Figure, type Plotly } from './plotly.js';

/** Width of a plot on paper [px]: that of A4 and Letter between their margins. */
const printWidth = 660;

type Drawing = (width: number, colours: Palette) => Figure;

let light: Palette | undefined;

/**
 * A plot as it is printed, light and as wide as a page: drawn aside while there is time, and put in the place of the one
 * on the screen when it comes to printing, for which a browser leaves no time.
 */
export class Paper {
  private readonly picture = document.createElement('div');
  private drawn: Drawing | undefined;
  private height: number | undefined;

  /** @param screen the element that holds the plot on the screen */
  constructor(private readonly screen: HTMLElement) {}

  /** Draws it, unless it is drawn. */
  draw(library: Plotly, figure: Drawing): void {
    if (this.drawn === figure) return;
    light ??= palette('light');
    const { data, layout } = figure(printWidth, light);
    void library.react(this.picture, data, layout, { ...config, staticPlot: true });
    this.drawn = figure;
    this.height = layout.height;
  }

  /** Puts it in place. */
  show(): void {
    if (!this.drawn) return;
    this.picture.style.height = this.height ? `${this.height}px` : this.screen.style.height;
    this.screen.style.display = 'none';
    this.screen.after(this.picture);
  }

  /** Takes it away again. */
  hide(): void {
    this.picture.remove();
    this.screen.style.display = '';
  }

  /** Lets go of it. */
  clear(library: Plotly | undefined): void {
    this.hide();
    library?.purge(this.picture);
  }
}
