#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Can the checks of the house fail? selfcheck.py [--qmllint PROGRAM]

Each check is run over a small good tree, which must pass, and over the same tree spoilt in one way, which must
fail with the words expected. Exit code 0 if all of them do.
"""

import pathlib
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).parent
SPDX = "SPDX-FileCopyrightText: 2026 The Halfcup developers\n{0} SPDX-License-Identifier: Apache-2.0\n"
CPP = "// " + SPDX.format("//")
CMAKE = "# " + SPDX.format("#")

GOOD = {
    "CMakeLists.txt": CMAKE,
    "README.md": "A good tree.\n",
    "DEVELOPERS.md": "A good tree.\n",
    "LICENSE": "Apache\n",
    "assets/word.txt": "jar\n",
    "demo-data/word.txt": "jar\n",
    "platform/linux/run": "#!/bin/bash\n" + CMAKE + 'echo "$@"\n',
    "tests/run.py": CMAKE + "print(1)\n",
    "tests/unit/unit.cmake": CMAKE + "halfcup_test(load)\n",
    "qml/Main.qml": CPP + "import QtQuick\nItem {}\n",
    "qml/parts/Big.qml": CPP + "import QtQuick\nItem {}\n",
    "qml/look/PlainText.qml": CPP + "import QtQuick\nText {\n    textFormat: Text.PlainText\n}\n",
    "qml/sources/SourcesPage.qml": CPP + "import QtQuick\nItem {\n    PlainText {\n        text: page.sources.pageText\n"
                                   "        textFormat: Text.MarkdownText // a page of our own\n    }\n}\n",
    "cpp/store/rows.cpp": CPP + 'auto a = "SELECT * FROM " + m_name + " WHERE id = ?";\nauto b = "no " + path + " there";\n',
    "cpp/layers.cmake": CMAKE + "set(HALFCUP_LAYERS mites records store place touch)\n"
                        'set(HALFCUP_MAY_LINK_mites "")\nset(HALFCUP_MAY_LINK_records mites)\n'
                        "set(HALFCUP_MAY_LINK_store records mites)\nset(HALFCUP_MAY_LINK_place records mites)\n"
                        "set(HALFCUP_MAY_LINK_touch store place records mites)\n",
    "cpp/mites/load.h": CPP + "#pragma once\n#include <vector>\n",
    "cpp/mites/CMakeLists.txt": CMAKE + "halfcup_layer(mites SOURCES load.cpp LIBRARIES Boost::headers)\n",
    "cpp/records/sample.h": CPP + '#pragma once\n#include "mites/load.h"\n#include "records/sample.h"\n',
    "cpp/store/CMakeLists.txt": CMAKE + "halfcup_layer(store\n    LAYERS records mites\n    SOURCES store.cpp)\n",
    "cpp/place/source.cpp": CPP + "#include <QGeoPositionInfoSource>\n// system(\"x\") is only spoken of\n"
                            "int rise() {\n    return QLocale::system().decimalPoint().size();\n}\n",
    "cpp/device/events.cpp": CPP + "auto* app = QCoreApplication::instance();\n",
    "cpp/touch/main.cpp": CPP + "#include <QGeometry>\nauto* app = QCoreApplication::instance();\n",
}

# In two halves: what this file itself must not contain. Check, file, what is added to it (None: the file goes), words of the complaint
BAD = (
    ("layers", "cpp/records/sample.h", '#include "store/store.h"\n', "may not reach up or across to store"),
    ("layers", "cpp/mites/load.h", "#include <QString>\n", "C++ and Boost.Math only"),
    ("layers", "cpp/mites/load.h", "#include <QtCore/QString>\n", "C++ and Boost.Math only"),
    ("layers", "cpp/store/store.h", '#include "../place/fix.h"\n', "walks past the layers"),
    ("layers", "cpp/store/store.h", '#include "store.h"\n', "write \"store/store.h\""),
    ("layers", "cpp/store/CMakeLists.txt", "halfcup_layer(store LAYERS place SOURCES a.cpp)\n", "store may not link place"),
    ("layers", "cpp/mites/CMakeLists.txt", "halfcup_layer(mites SOURCES a.cpp LIBRARIES Qt6::Core)\n", "without Qt"),
    ("layers", "cpp/store/CMakeLists.txt", "target_link_libraries(halfcup_store PUBLIC Halfcup::place)\n", "store may not link place"),
    ("layers", "cpp/layers.cmake", "set(HALFCUP_MAY_LINK_store place)\n", "does not point down"),
    ("layers", "cpp/layers.cmake", None, "not there"),
    ("forbidden", "cpp/touch/main.cpp", 'c->setContextProperty("a", b);\n', "setContextProperty"),
    ("forbidden", "qml/Main.qml", "function f() { return new XMLHttpRequest() }\n", "needs no network"),
    ("forbidden", "qml/Main.qml", "import QtQuick.LocalStorage\n", "the store alone"),
    ("forbidden", "qml/Main.qml", "import QtMultimedia\n", "through touch alone"),
    ("forbidden", "qml/Main.qml", "import QtQuick.Controls.Basic\n", "not asked for"),
    ("forbidden", "qml/Main.qml", "import QtQuick.Layouts\n", "not asked for"),
    ("forbidden", "cpp/store/store.cpp", "QSqlDatabase base;\n", "SQLiteCpp"),
    ("forbidden", "cpp/store/store.cpp", 'int n = system("true");\n', "no shell"),
    ("forbidden", "cpp/store/store.cpp", 'int n = std::system("true");\n', "no shell"),
    ("forbidden", "cpp/store/store.cpp", 'auto* f = popen("true", "r");\n', "no shell"),
    ("forbidden", "cpp/touch/main.cpp", "#include <QGeoCoordinate>\n", "Qt Positioning is included in more than one"),
    ("forbidden", "cpp/store/store.cpp", "auto& s = Store::instance();\n", "singleton below touch"),
    ("forbidden", "cpp/store/store.cpp", "auto* a = QCoreApplication::instance();\n", "singleton below touch"),
    ("forbidden", "cpp/device/keys.cpp", "auto& k = Keys::instance();\n", "singleton below touch"),
    ("forbidden", "tests/unit/unit.cmake", "set_tests_properties(load PROPERTIES DISABLED ON)\n", "switched off"),
    ("plain_text", "qml/look/PlainText.qml", None, "is not a Text that is"),
    ("plain_text", "qml/Main.qml", "Text { text: yard.name }\n", "may take a text for HTML"),
    ("plain_text", "qml/Main.qml", "Item { T.Label { text: yard.name } }\n", "may take a text for HTML"),
    ("plain_text", "qml/Main.qml", "PlainText { textFormat: Text.MarkdownText }\n", "another format than plain text"),
    ("plain_text", "qml/Main.qml", "PlainText { textFormat: Text.RichText }\n", "a text is Text.PlainText"),
    ("plain_text", "qml/sources/SourcesPage.qml", "PlainText {\n    text: yard.note\n    textFormat: Text.MarkdownText\n}\n",
     "another format than plain text"),
    ("plain_text", "qml/Main.qml", "MouseArea { onClicked: Qt.openUrlExternally(yard.note) }\n", "opens no address"),
    ("plain_text", "qml/Main.qml", "PlainText { onLinkActivated: link => go(link) }\n", "no text of the app has links"),
    ("plain_text", "cpp/touch/main.cpp", "QDesktopServices::openUrl(url);\n", "opens no address"),
    ("plain_text", "cpp/touch/main.cpp", "QTextDocument page;\n", "these read HTML"),
    ("sql_text", "cpp/store/store.cpp", 'query("SELECT * FROM yard WHERE name = \'" + yard.name + "\'");\n', "bind it as a value"),
    ("sql_text", "cpp/store/store.cpp", 'query(std::string("DELETE FROM yard ") + "WHERE id = " + id);\n', "'id' is made a part"),
    ("sql_text", "cpp/store/store.cpp", 'query("UPDATE yard SET " + quoted(text(name)) + " = ?");\n', "bind it as a value"),
    ("sql_text", "cpp/place/source.cpp", "sqlite3_exec(base, text, nullptr, nullptr, nullptr);\n", "the store alone speaks SQL"),
    ("spdx", "cpp/store/new.cpp", "int a;\n", "SPDX-License-Identifier"),
    ("spdx", "platform/linux/other", "#!/bin/bash\n", "SPDX-FileCopyrightText"),
    ("sizes", "cpp/mites/load.h", "// more\n" * 150, "at most 150"),
    ("sizes", "cpp/place/source.cpp", "// more\n" * 400, "at most 400"),
    ("sizes", "tests/unit/load.cpp", CPP + "// more\n" * 600, "at most 600"),
    ("sizes", "qml/Main.qml", "// more\n" * 250, "at most 250"),
    ("sizes", "qml/parts/Big.qml", "// more\n" * 120, "at most 120"),
    ("toplevel", "docs/page.md", "A page.\n", "not among the names"),
    ("toplevel", "README.md", None, "missing"),
    ("machine_paths", "assets/word.txt", "see /home" "/somebody/jars\n", "place of one machine"),
    ("format", "cpp/mites/load.h", "int   a ;\n", "clang-format"),
    ("spelling", "README.md", "T" "eh jar.\n", "==>"),
    ("scripts", "platform/linux/run", "rm $1\n", "SC2086"),
    ("scripts", "tests/run.py", "def f(:\n", "cannot read"),
)


# What qmllint must stop at, with the settings of .qmllint.ini.
BAD_QML = {"an unknown name": "import QtQuick\nItem { width: foo }\n",
           "an import nobody uses": "import QtQuick\nimport QtQuick.Layouts\nItem { width: 3 }\n"}


def run(check, root):
    got = subprocess.run([sys.executable, "-B", str(HERE / "check.py"), check, str(root)], capture_output=True, text=True,
                         check=False)
    return got.returncode, got.stdout + got.stderr


def lay(root, files):
    for name, text in files.items():
        path = root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
        if text.startswith("#!"):
            path.chmod(0o755)


def try_qmllint(program):
    """How many of the bad QML files qmllint lets pass, plus one if it stops at a good one."""
    wrong = 0
    for what, text in (BAD_QML | {"": GOOD["qml/Main.qml"]}).items():
        with tempfile.TemporaryDirectory() as folder:
            root = pathlib.Path(folder)
            lay(root, {"Page.qml": text, ".qmllint.ini": (HERE.parents[1] / ".qmllint.ini").read_text(encoding="utf-8")})
            got = subprocess.run([program, "Page.qml"], cwd=root, capture_output=True, text=True, check=False)
            if (got.returncode != 0) != bool(what):
                wrong += 1
                print(f"qmllint: {what or 'a good file'} gave {got.returncode}:\n{got.stderr}")
    return wrong


def main(arguments):
    if arguments and (len(arguments) != 2 or arguments[0] != "--qmllint"):
        print(__doc__, file=sys.stderr)
        return 2
    settings = {n: (HERE.parents[1] / n).read_text(encoding="utf-8") for n in (".clang-format", ".codespellrc")}
    wrong = try_qmllint(arguments[1]) if arguments else 0
    skipped = [] # checks that cannot be made here
    for check in sorted({case[0] for case in BAD}):
        with tempfile.TemporaryDirectory() as folder:
            root = pathlib.Path(folder)
            lay(root, GOOD | settings)
            code, said = run(check, root)
            if code == 77:
                skipped.append(check)
                print(said.strip())
            elif code != 0:
                wrong += 1
                print(f"{check}: the good tree should pass, but:\n{said}")
    for check, name, added, expected in BAD:
        if check in skipped:
            continue
        with tempfile.TemporaryDirectory() as folder:
            root = pathlib.Path(folder)
            lay(root, GOOD | settings)
            if added is None:
                (root / name).unlink()
            else:
                lay(root, {name: GOOD.get(name, "") + added})
            code, said = run(check, root)
            if code != 1 or expected not in said:
                wrong += 1
                print(f"{check}: {name} with {added!r:.60} should fail with '{expected}', but gave {code}:\n{said}")
    print(f"{len(BAD)} spoilt trees tried; {wrong} trees or files were not judged as they should be")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
