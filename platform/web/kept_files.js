// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// The folder /kept: files in memory, as all of Emscripten's, and a copy in the browser's storage (site/kept_storage.js).
//
// The program has one thread and is never stopped in the middle, so whenever it has gone back to the browser its files
// are as a disk would have them at that moment. Then whatever changed since the last time goes into the storage, in one
// transaction: all of it is kept, or nothing. A page that is killed finds the files as they were at one such moment, and
// SQLite makes of its journal what it would make of it after a power cut. So SQLite needs to know nothing of this, and
// neither does any other code that writes files.
//
// What the storage has confirmed is asked for by halfcupIsAllKept(): cpp/device/web/frames_of_what_is_kept.h.
addToLibrary({
  $KEPT__deps: ['$FS', '$MEMFS'],
  $KEPT__postset: () => 'addOnPreRun(() => KEPT.mount());',
  $KEPT: {
    storage: null,
    root: null,
    inStorage: null, // Map: path -> what the storage has of it, as text to compare
    sizes: null, // Map: id -> size in the storage
    nextId: 1,
    isPlanned: false, // something changed; the storage has not been told
    pending: 0, // transactions on their way
    hasFailed: false,
    listeners: [],
    afterwards: [],

    mount() {
      KEPT.storage = Module['keptStorage'];
      // Made here: of what stands above, Emscripten copies plain values only into the program.
      KEPT.inStorage = new Map();
      KEPT.sizes = new Map();
      FS.mkdir('/kept');
      FS.mount({ mount: (mount) => KEPT.makeRoot(mount) }, {}, '/kept');
      KEPT.root = FS.lookupPath('/kept').node;
      for (const { path, record, blocks } of KEPT.storage.found) KEPT.fill(path, record, blocks);
      KEPT.storage.found = [];
    },

    makeRoot(mount) {
      const root = MEMFS.mount(mount);
      KEPT.dirNodeOps = {
        ...MEMFS.ops_table.dir.node,
        mknod(parent, name, mode, dev) {
          const node = KEPT.adopt(MEMFS.createNode(parent, name, mode, dev));
          KEPT.plan();
          return node;
        },
      };
      for (const name of ['setattr', 'rename', 'unlink', 'rmdir']) KEPT.dirNodeOps[name] = KEPT.planning(MEMFS.ops_table.dir.node[name]);
      KEPT.fileNodeOps = {
        ...MEMFS.ops_table.file.node,
        setattr(node, attributes) {
          const before = node.usedBytes;
          MEMFS.ops_table.file.node.setattr(node, attributes);
          KEPT.mark(node, Math.min(before, node.usedBytes), Math.max(before, node.usedBytes));
        },
      };
      const stream = MEMFS.ops_table.file.stream;
      KEPT.fileStreamOps = {
        ...stream,
        write(opened, buffer, offset, length, position, canOwn) {
          const before = opened.node.usedBytes;
          const written = stream.write(opened, buffer, offset, length, position, canOwn);
          KEPT.mark(opened.node, Math.min(before, position), position + written);
          return written;
        },
        allocate(opened, offset, length) {
          const before = opened.node.usedBytes;
          stream.allocate(opened, offset, length);
          KEPT.mark(opened.node, before, opened.node.usedBytes);
        },
        msync(opened, buffer, offset, length, flags) {
          const result = stream.msync(opened, buffer, offset, length, flags);
          KEPT.mark(opened.node, offset, offset + length);
          return result;
        },
      };
      return KEPT.adopt(root);
    },

    planning(operation) {
      return (...given) => {
        const result = operation(...given);
        KEPT.plan();
        return result;
      };
    },

    adopt(node) {
      if (FS.isDir(node.mode)) {
        node.node_ops = KEPT.dirNodeOps;
      } else if (FS.isFile(node.mode)) {
        node.node_ops = KEPT.fileNodeOps;
        node.stream_ops = KEPT.fileStreamOps;
        node.keptDirty = new Set();
      }
      return node;
    },

    // From the storage into memory, before the program starts.
    fill(path, record, blocks) {
      const parts = path.split('/').filter((part) => part);
      const name = parts.pop();
      let parent = KEPT.root;
      for (const part of parts) parent = parent.contents[part];
      const node = KEPT.adopt(MEMFS.createNode(parent, name, record.mode, 0));
      node.timestamp = record.time;
      KEPT.inStorage.set(path, KEPT.textOf(record));
      if (!record.id) return;
      node.keptId = record.id;
      KEPT.nextId = Math.max(KEPT.nextId, record.id + 1);
      KEPT.sizes.set(record.id, record.size);
      node.contents = new Uint8Array(record.size);
      node.usedBytes = record.size;
      for (const [index, bytes] of blocks) {
        const at = index * KEPT.storage.blockBytes;
        if (at < record.size) node.contents.set(bytes.subarray(0, Math.min(bytes.length, record.size - at)), at);
      }
    },

    // The bytes from one place up to another are not what the storage has.
    mark(node, from, to) {
      const size = KEPT.storage.blockBytes;
      for (let index = Math.floor(from / size); index * size < to; ++index) node.keptDirty.add(index);
      KEPT.plan();
    },

    plan() {
      if (KEPT.isPlanned || KEPT.hasFailed) return;
      KEPT.isPlanned = true;
      // Runs as soon as nothing of the program is on the stack any more.
      queueMicrotask(() => {
        try {
          KEPT.keep();
        } catch (error) {
          KEPT.fail(error);
        }
      });
    },

    // From now on nothing new is shown: what the glass shows is kept.
    fail(error) {
      KEPT.hasFailed = true;
      Module['keptFailed'](error);
    },

    textOf: (record) => [record.id, record.size, record.mode, record.time].join(' '),

    // SQLite's index of its log is made anew from the log.
    isWorthKeeping: (name) => !name.endsWith('-shm'),

    keep() {
      KEPT.isPlanned = false;
      const changes = { files: [], gone: [], blocks: [], cut: [] };
      const paths = new Set();
      const ids = new Set();
      const look = (folder, above) => {
        for (const [name, node] of Object.entries(folder.contents)) {
          const isFolder = FS.isDir(node.mode);
          if (!isFolder && (!FS.isFile(node.mode) || !KEPT.isWorthKeeping(name))) continue;
          const path = above + '/' + name;
          paths.add(path);
          KEPT.compare(path, node, isFolder, ids, changes);
          if (isFolder) look(node, path);
        }
      };
      look(KEPT.root, '');
      for (const path of KEPT.inStorage.keys())
        if (!paths.has(path)) {
          KEPT.inStorage.delete(path);
          changes.gone.push(path);
        }
      for (const id of KEPT.sizes.keys())
        if (!ids.has(id)) {
          KEPT.sizes.delete(id);
          changes.cut.push([id, 0]);
        }
      if (Object.values(changes).every((list) => !list.length)) return KEPT.tellIfKept();
      ++KEPT.pending;
      KEPT.storage.write(changes).then(
        () => {
          --KEPT.pending;
          KEPT.tellIfKept();
        },
        (error) => KEPT.fail(error),
      );
    },

    compare(path, node, isFolder, ids, changes) {
      const record = { id: 0, size: 0, mode: node.mode, time: 0 };
      if (!isFolder) {
        record.id = node.keptId ||= KEPT.nextId++;
        record.size = node.usedBytes;
        record.time = Number(node.timestamp);
        ids.add(record.id);
        const size = KEPT.storage.blockBytes;
        for (const index of node.keptDirty)
          if (index * size < record.size)
            // A copy: a part of a larger array would be stored with all of it.
            changes.blocks.push([record.id, index, node.contents.slice(index * size, Math.min((index + 1) * size, record.size))]);
        node.keptDirty.clear();
        if (record.size < (KEPT.sizes.get(record.id) ?? 0)) changes.cut.push([record.id, Math.ceil(record.size / size)]);
        KEPT.sizes.set(record.id, record.size);
      }
      const text = KEPT.textOf(record);
      if (KEPT.inStorage.get(path) === text) return;
      KEPT.inStorage.set(path, text);
      changes.files.push([path, record]);
    },

    isAllKept: () => !KEPT.isPlanned && !KEPT.pending && !KEPT.hasFailed,

    tellIfKept() {
      if (!KEPT.isAllKept()) return;
      for (const action of KEPT.afterwards.splice(0)) action();
      for (const listener of KEPT.listeners) listener();
    },

    // Sounds and buzzes acknowledge a touch as a picture does.
    whenKept(action) {
      if (KEPT.isAllKept()) action();
      else KEPT.afterwards.push(action);
    },
  },

  halfcupIsAllKept__deps: ['$KEPT'],
  halfcupIsAllKept: () => (KEPT.isAllKept() ? 1 : 0),
  halfcupOnKept__deps: ['$KEPT'],
  halfcupOnKept: (kept, self) => {
    KEPT.listeners.push(() => {{{ makeDynCall('vp', 'kept') }}}(self));
  },
});
