import { useSignal } from '@preact/signals';
import { type PictureForm, type PictureName, pictureForms, savePicture } from './pictureFile.js';

interface SavePictureProps {
  /** What the picture is called, from the wide to the narrow. */
  readonly name: PictureName;
  /** The light picture as SVG; undefined while there is none. */
  readonly picture: () => Promise<string | undefined>;
}

/** Saves one picture as a file. */
export function SavePicture({ name, picture }: SavePictureProps) {
  const failed = useSignal<string | null>(null);
  async function save(form: PictureForm): Promise<void> {
    try {
      failed.value = null;
      const svg = await picture();
      if (svg !== undefined) await savePicture(svg, name, form);
    } catch (error) {
      failed.value = `The picture could not be made: ${(error as Error).message}.`;
    }
  }
  const of = name.slice(1).join(' ') || name.join(' ');
  return (
    <p class="save-picture" data-screen>
      {pictureForms.map((form) => (
        <button
          key={form}
          type="button"
          class="plain"
          aria-label={`Save the picture as ${form.toUpperCase()}: ${of}`}
          onClick={() => void save(form)}
        >
          {form.toUpperCase()}
        </button>
      ))}
      {failed.value && <span role="alert">{failed.value}</span>}
    </p>
  );
}
