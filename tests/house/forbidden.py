# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""What must not occur in the program, and what may occur in one folder only."""

import re

from tree import CPP, lines, without_comments

# Pattern, and the sentence that says what to do instead.
NOWHERE = (
    (r"\bsetContextProperty\b", "qmllint cannot see a context property; make it a QML_ELEMENT or a required property."),
    (r"\bXMLHttpRequest\b", "the screens reach nothing but touch; the app needs no network."),
    (r"\bQtQuick\.LocalStorage\b|\bopenDatabaseSync\b", "the store alone writes what is kept."),
    (r"\bQSqlDatabase\b|\bQSqlQuery\b", "SQLite is reached through SQLiteCpp, in the store."),
    (r"(?<![\w:.>])system\s*\(|\bstd::system\s*\(|(?<![\w>])::system\s*\(", "no shell is started from the program."),
    (r"\bpopen\s*\(", "no shell is started from the program."),
    (r"^\s*import\s+QtQuick\.Controls\b", "reading that module is a tenth of the app's start, and its package is not asked for."),
    (r"^\s*import\s+QtQuick\.Layouts\b", "it is a plugin, which the start would wait for, and its package is not asked for: see SideRow."),
)
# Each of these parts of Qt is known to one adapter, so that the same core builds where the part does not exist.
ONE_FOLDER = {
    "Qt Positioning": r"#\s*include\s*<(?:QtPositioning/|QGeo(?!metry)|QNmea)",
    "Qt Multimedia": r"#\s*include\s*<(?:QtMultimedia/|QSoundEffect|QMedia|QAudio)",
    "Qt TextToSpeech": r"#\s*include\s*<(?:QtTextToSpeech/|QTextToSpeech|QVoice)",
}
QML_IMPORTS = r"^\s*import\s+(QtPositioning|QtMultimedia|QtTextToSpeech|QtLocation|QtSensors)\b"
SINGLETON_MAY = ("cpp/touch/", "cpp/desk/")
# Not a singleton of ours: key events of the whole program come from Qt's application object and nowhere else.
QT_APPLICATION = r"\bQ(?:Core|Gui)Application::instance\s*\(\s*\)"


def forbidden(tree):
    seen = {part: {} for part in ONE_FOLDER}
    for name in tree.files("cpp", "qml", ends=CPP + (".qml", ".js")):
        for number, line in lines(without_comments(tree.text(name))):
            for pattern, instead in NOWHERE:
                found = re.search(pattern, line)
                if found:
                    tree.complain(name, number, f"'{found[0].strip()}': {instead}")
            for part, pattern in ONE_FOLDER.items():
                if re.search(pattern, line):
                    seen[part].setdefault(name.rsplit("/", 1)[0], f"{name}:{number}")
            if name.startswith("qml/") and re.match(QML_IMPORTS, line):
                tree.complain(name, number, "the screens reach the device through touch alone.")
            rest = re.sub(QT_APPLICATION, "", line) if name.startswith("cpp/device/") else line
            if name.startswith("cpp/") and not name.startswith(SINGLETON_MAY) and re.search(r"\binstance\s*\(\s*\)", rest):
                tree.complain(name, number, "a singleton below touch; let the caller pass the object in.")
    for part, folders in seen.items():
        if len(folders) > 1:
            tree.complain(", ".join(sorted(folders.values())), 0, f"{part} is included in more than one folder.")
    # A disabled test is counted by ctest as neither passed nor failed: nobody would miss it.
    for name in tree.files("tests", ends=("CMakeLists.txt", ".cmake")):
        for number, line in lines(re.sub(r"#[^\n]*", "", tree.text(name))):
            if re.search(r"\b(DISABLED|WILL_FAIL)\b", line):
                tree.complain(name, number, "a test that is switched off or meant to fail proves nothing.")
