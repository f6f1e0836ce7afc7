import { shown } from './atWork.js';
import { notice } from './notices.js';
import { openSheetFile } from './sheetFiles.js';
import { replace } from './store.js';

/** Puts the sheet of a file in place of the open one, or tells why not. */
export async function openSheet(file: File): Promise<void> {
  try {
    const opened = await shown(`Opening ${file.name}`, (tell, signal) => openSheetFile(file, tell, signal));
    if (!opened) return;
    replace(opened.sheet);
    if (!opened.stays)
      notice.value = { what: `This browser would not keep the log of ${file.name} for the next visit: keep the file.` };
  } catch (error) {
    notice.value = {
      what: `${file.name} cannot be opened: ${(error as Error).message}. What was open stays as it was.`,
    };
  }
}
