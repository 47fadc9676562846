interface LaunchWindow {
  launchQueue?: {
    setConsumer(take: (launch: { files: FileSystemFileHandle[] }) => void): void;
  };
}

/**
 * Tells of a file that the phone gave the app: by opening it with the app, or by its share sheet,
 * from which the service worker took it (see sw/sw.ts). It is given once.
 */
export function receiveFile(take: (file: File) => void): void {
  (window as unknown as LaunchWindow).launchQueue?.setConsumer(({ files: [first] }) => {
    void first?.getFile().then(take);
  });
  void takeShared().then((file) => file && take(file));
}

async function takeShared(): Promise<File | undefined> {
  try {
    const cache = await caches.open('taken-in');
    const response = await cache.match('file');
    await cache.delete('file');
    return response && new File([await response.blob()], 'shared');
  } catch {
    return undefined; // A phone without a service worker shares nothing with the app.
  }
}
