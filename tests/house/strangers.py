# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""What names and notes of strangers could act through: texts that are more than text, and SQL made from text."""

import re

from tree import CPP, lines, without_comments

THE_TEXT = "qml/look/PlainText.qml"
# Types of Qt Quick that show a text and would take one that looks like HTML for it (Text.AutoText), and controls that
# are made with such a one. A text field of one line knows plain text alone.
SHOWS_TEXT = ("Text|TextEdit|TextArea|Label|Button|RoundButton|ToolButton|TabButton|CheckBox|RadioButton|Switch|ToolTip"
              "|ItemDelegate|CheckDelegate|RadioDelegate|SwitchDelegate|SwipeDelegate|ComboBox|SpinBox|Tumbler|MenuItem"
              "|MenuBarItem|Menu|Dialog|DialogButtonBox|GroupBox|DelayButton|MessageDialog")
# Pages of our own, compiled in, may be Markdown: the file, and what its text is bound to.
OWN_PAGES = {"qml/start/FirstStartPage.qml": "page.setup.whatThisIsNot",
             "qml/sources/SourcesPage.qml": "page.sources.pageText"}
ACTS = (
    (r"\bopenUrlExternally\b|\bQDesktopServices\b", "the app opens no address; what it shows came from anywhere."),
    (r"\b(?:onLinkActivated|linkActivated|onLinkHovered|linkHovered)\b", "no text of the app has links."),
    (r"\b(?:RichText|StyledText|AutoText)\b", "a text is Text.PlainText, or a page of our own."),
    (r"\b(?:createQmlObject|eval)\s*\(|\bnew\s+Function\b|\bWebView\b|\bWebEngineView\b", "nothing is run that came as a text."),
    (r"\bQTextDocument\b|\bQTextBrowser\b|\bQStaticText\b|\bsetHtml\b|\btoHtmlEscaped\b", "these read HTML; draw plain text."),
)


def plain_text(tree):
    """Every text on the screens is plain, but for two pages of our own."""
    if not re.search(r"^Text \{$.*^    textFormat: Text\.PlainText$", tree.text(THE_TEXT) if tree.has(THE_TEXT) else "", re.M | re.S):
        tree.complain(THE_TEXT, 0, "is not a Text that is Text.PlainText.")
    for name in tree.files("cpp", "qml", ends=CPP + (".qml", ".js")):
        text = without_comments(tree.text(name))
        for number, line in lines(text):
            for pattern, why in ACTS:
                found = re.search(pattern, line)
                if found:
                    tree.complain(name, number, f"'{found[0]}': {why}")
            if not name.endswith(".qml"):
                continue
            shown = re.search(rf"(?<![\w.])(?:\w+\.)?({SHOWS_TEXT})\s*\{{", line)
            if shown and name != THE_TEXT:
                tree.complain(name, number, f"'{shown[1]}' may take a text for HTML; use PlainText, or a part made with it.")
            if "textFormat" in line and name != THE_TEXT:
                _page_of_our_own(tree, name, number, text)


def _page_of_our_own(tree, name, number, text):
    bound = OWN_PAGES.get(name)
    # The one object with another format is the one that shows the page.
    if not bound or text.count("textFormat") != 1 or not re.search(
            rf"^ *text: {re.escape(bound)}$(?:(?!^ *(?:\w+ \{{|\}})).)*^ *textFormat: Text\.MarkdownText *$", text, re.M | re.S):
        tree.complain(name, number, "another format than plain text, and not for a page of our own.")


LITERAL = re.compile(r'R"sql\(.*?\)sql"|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])\'', re.S)
SQL = re.compile(r"\b(?:SELECT|INSERT INTO|UPDATE|DELETE FROM|DROP TABLE|CREATE TABLE|ALTER TABLE|PRAGMA|VACUUM|WHERE|ORDER BY|FROM"
                 r"|VALUES|ON CONFLICT|AND|OR)\b|= ?\?")
# A name or a call, with what is called on it; literals have become SQL_ and OTHER_.
OPERAND = r"[A-Za-z_][\w:.]*(?:->\w+)?(?:\((?:[^()]|\([^()]*\))*\))?"
SUM = re.compile(rf"{OPERAND}(?:\s*\+\s*{OPERAND})+")
# What may be joined to SQL: names that the program itself gives to its tables and columns, pieces of SQL that this check
# sees where they are made, whole numbers, and names out of a file behind quoted().
MAY_JOIN = re.compile(
    r"(?:std::string\()?records::nameOf\(kind\)\)?|(?:std::string\()?(?:noteTable|hashName|countColumns|field|name|SQL_|OTHER_)\)?"
    r"|m_name|table|columns|marks|updates|rest|where|but|revisionsWhere|countsWhere|quoted\(table(?:, OTHER_)?\)"
    r"|orderOf\(database, table\)|std::to_string\([\w.]+\)")


def sql_text(tree):
    """No value gets into SQL as text: values are bound."""
    for name in tree.files("cpp", ends=CPP):
        text = without_comments(tree.text(name))
        if not name.startswith("cpp/store/"):
            if re.search(r"\bsqlite3_\w+\s*\(|\bSQLite::", text):
                tree.complain(name, 0, "the store alone speaks SQL.")
            continue
        plain = LITERAL.sub(lambda m: ("SQL_" if SQL.search(m[0]) else "OTHER_") + "\n" * m[0].count("\n"), text)
        for statement in re.finditer(r"[^;{}]+", plain):
            if not re.search(r"\bSQL_", statement[0]):
                continue
            for joined in SUM.finditer(statement[0]):
                for operand in re.split(r"\s*\+\s*", joined[0]):
                    if not MAY_JOIN.fullmatch(operand):
                        number = plain[:statement.start() + joined.start()].count("\n") + 1
                        tree.complain(name, number, f"'{operand}' is made a part of SQL; bind it as a value.")
