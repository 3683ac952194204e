/** Hands a file to the reader, as a download: nothing leaves the device. */
export function saveFile(name: string, content: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // The browser reads the file after the click; a minute is ample.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Copies a text; false where the browser does not let a page do so. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
