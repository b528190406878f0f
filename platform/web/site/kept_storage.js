// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// Files in the browser's storage (IndexedDB), in blocks, so that a touch writes a few kilobytes and not the whole database.
// Store "files": path -> { id, size, mode, time }; id 0 is a folder. Store "blocks": [id, index] -> bytes.
'use strict';

class KeptStorage {
  blockBytes = 4096; // a page of SQLite's

  // Reads everything. Rejects where the browser gives this page no storage.
  static async open() {
    const storage = new KeptStorage();
    storage.database = await new Promise((resolve, reject) => {
      const request = indexedDB.open('halfcup', 1);
      request.onupgradeneeded = () => {
        request.result.createObjectStore('files');
        request.result.createObjectStore('blocks');
      };
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error('another page holds an older form of the storage'));
    });
    storage.found = await storage.readAll();
    return storage;
  }

  readAll() {
    return new Promise((resolve, reject) => {
      const found = [];
      const transaction = this.database.transaction(['files', 'blocks'], 'readonly');
      const blocks = transaction.objectStore('blocks');
      transaction.objectStore('files').openCursor().onsuccess = ({ target: { result: cursor } }) => {
        if (!cursor) return;
        const file = { path: cursor.key, record: cursor.value, blocks: [] };
        found.push(file);
        if (file.record.id) {
          const range = KeptStorage.blocksFrom(file.record.id, 0);
          let keys;
          blocks.getAllKeys(range).onsuccess = ({ target: { result } }) => (keys = result);
          // In the order of their keys, as those before it.
          blocks.getAll(range).onsuccess = ({ target: { result } }) => (file.blocks = result.map((bytes, i) => [keys[i][1], bytes]));
        }
        cursor.continue();
      };
      // Sorted by path, so that a folder comes before what is in it.
      transaction.oncomplete = () => resolve(found.sort((a, b) => (a.path < b.path ? -1 : 1)));
      transaction.onabort = () => reject(transaction.error);
    });
  }

  static blocksFrom(id, index) {
    return IDBKeyRange.bound([id, index], [id, Infinity]);
  }

  // All or nothing. Resolves once it is on the disk ("strict"), not in a cache of the system; rejects where the storage
  // is full or was taken away.
  write({ files, gone, blocks, cut }) {
    return new Promise((resolve, reject) => {
      const transaction = this.database.transaction(['files', 'blocks'], 'readwrite', { durability: 'strict' });
      const fileStore = transaction.objectStore('files');
      const blockStore = transaction.objectStore('blocks');
      for (const path of gone) fileStore.delete(path);
      for (const [id, index] of cut) blockStore.delete(KeptStorage.blocksFrom(id, index));
      for (const [path, record] of files) fileStore.put(record, path);
      for (const [id, index, bytes] of blocks) blockStore.put(bytes, [id, index]);
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error ?? new Error('the storage gave up a change'));
    });
  }
}
