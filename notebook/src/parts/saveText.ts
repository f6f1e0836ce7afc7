/** Hands a text to the browser's downloads. */
export const saveText = (name: string, type: string, text: string): void => saveBlob(name, new Blob([text], { type }));

/** Hands a file to the browser's downloads. */
export function saveBlob(name: string, blob: Blob): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
