// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/wash_columns.h"

#include "exchange/samples_csv.h"
#include "exchange/table_sentence.h"
#include "exchange/table_values.h"

#include <algorithm>
#include <span>

namespace halfcup::exchange {

namespace {

struct FieldWords {
    WashField field;
    std::string_view name;
    const char* title;
    std::string_view own;      // the column of our own table
    std::string_view headings; // as comparableName() writes them, parted by semicolons
};

using F = WashField;

constexpr std::array<FieldWords, allWashFields.size()> fieldWords{{
    {F::Day, "day", tableText("Day"), "scooped_at",
     "day;date;wash date;date of wash;sampling date;sample date;sampled on;washed on;when;"
     "fecha;dia;fecha del lavado;fecha de muestreo;"
     "jour;date du lavage;date de lavage;date du prelevement;"
     "tag;datum;waschdatum;probedatum;datum der probe"},
    {F::Time, "time", tableText("Time of day"), "",
     "time;time of day;hour;clock;hora;heure;horaire;zeit;uhrzeit;stunde"},
    {F::Yard, "yard", tableText("Yard"), "yard",
     "yard;bee yard;apiary;location;site;place;colmenar;apiario;asentamiento;lugar;"
     "rucher;emplacement;lieu;stand;bienenstand;standort;ort"},
    {F::Colony, "colony", tableText("Colony"), "colony",
     "colony;colony label;colony number;colony no;colony id;hive;hive number;hive no;hive id;"
     "colmena;colonia;numero de colmena;n de colmena;"
     "ruche;colonie;numero de ruche;no de ruche;n de ruche;"
     "volk;bienenvolk;volk nr;volknummer;beute;beute nr;stock;stocknummer"},
    {F::Method, "method", tableText("Method"), "method",
     "method;way;how;metodo;methode;methode de comptage;verfahren"},
    {F::Bees, "bees", tableText("Bees washed"), "bees_mean",
     "bees;bees washed;bees counted;number of bees;bee count;bees in sample;sample size;"
     "abejas;numero de abejas;n de abejas;abejas lavadas;"
     "abeilles;nombre d abeilles;nb abeilles;nb d abeilles;abeilles lavees;"
     "bienen;anzahl bienen;bienenzahl;zahl der bienen"},
    {F::ScoopMl, "ml", tableText("Scoop in ml"), "scoop_volume_ml",
     "ml;scoop ml;volume ml;bees ml;millilitres;milliliters;volume;scoop;"
     "volumen;volumen ml;abejas ml;mililitros;cacito;"
     "volume d abeilles;abeilles ml;millilitres d abeilles;"
     "bienen ml;milliliter;messbecher;volumen in ml;bienenvolumen"},
    {F::ScoopCups, "cups", tableText("Scoop in cups"), "",
     "cup;cups;cups of bees;scoop cups;bees cups;tazas;tasses;tassen"},
    {F::Mites, "mites", tableText("Mites counted"), "mites",
     "mites;mites counted;mite count;number of mites;varroa;varroas;varroa mites;varroa count;"
     "acaros;numero de acaros;n de acaros;varroas contadas;"
     "acariens;nombre de varroas;nb varroas;nombre d acariens;varroas comptes;"
     "milben;milbenzahl;anzahl milben;varroamilben;gezahlte milben"},
    {F::MitesPer100, "mites_per_100", tableText("Mites per 100 bees"), "",
     "mites per 100;mites per 100 bees;mites 100 bees;mites percent;percent mites;percent;"
     "infestation;infestation percent;infestation rate;percent infestation;load;varroa percent;"
     "infestacion;porcentaje;porcentaje de infestacion;acaros por 100 abejas;varroas por 100 abejas;"
     "taux d infestation;pourcentage;varroas pour 100 abeilles;acariens pour 100 abeilles;vp 100;"
     "befall;befallsgrad;befall percent;befall in percent;milben je 100 bienen;milben pro 100 bienen;"
     "prozent"},
    {F::Note, "note", tableText("Note"), "note",
     "note;notes;comment;comments;remark;remarks;nota;notas;observaciones;comentario;comentarios;"
     "remarque;remarques;commentaire;commentaires;observations;"
     "notiz;notizen;bemerkung;bemerkungen;anmerkung;kommentar"},
    {F::BeesCv, "bees_cv", tableText("Spread of the bees"), "bees_cv", ""},
    {F::SecondRinse, "second_rinse", tableText("Mites of a second rinse"), "mites_second_rinse", ""},
    {F::SampleId, "sample_id", tableText("Id of the wash"), "sample_id", ""},
    {F::Invented, "demo", tableText("Invented (demo)"), "demo", ""},
}};

const FieldWords& wordsOf(WashField field) {
    return fieldWords[static_cast<std::size_t>(field)];
}

struct Candidate {
    bool whole = false;     // the name is the heading, and not only has it in it
    std::size_t length = 0; // of the heading: a longer one says more
    std::size_t column = 0;
    WashField field = F::Day;
};

/// Whole words: "mites" is in "mites counted", "ort" is not in "sorte".
bool hasWords(std::string_view name, std::string_view words) {
    for (std::size_t at = name.find(words); at != std::string_view::npos; at = name.find(words, at + 1)) {
        const std::size_t end = at + words.size();
        if ((at == 0 || name[at - 1] == ' ') && (end == name.size() || name[end] == ' '))
            return true;
    }
    return false;
}

std::vector<Candidate> candidates(const std::vector<std::string>& names) {
    std::vector<Candidate> found;
    for (std::size_t column = 0; column < names.size(); ++column) {
        const std::string name = comparableName(names[column]);
        if (name.empty())
            continue;
        for (const FieldWords& words : fieldWords) {
            std::string_view left = words.headings;
            while (!left.empty()) {
                const std::string_view heading = left.substr(0, left.find(';'));
                left.remove_prefix(std::min(left.size(), heading.size() + 1));
                if (hasWords(name, heading))
                    found.push_back({name == heading, heading.size(), column, words.field});
            }
        }
    }
    std::ranges::stable_sort(found, [](const Candidate& a, const Candidate& b) {
        return a.whole != b.whole ? a.whole : a.length > b.length;
    });
    return found;
}

} // namespace

std::string_view nameOf(WashField field) {
    return wordsOf(field).name;
}

std::optional<WashField> washFieldFrom(std::string_view name) {
    for (const FieldWords& words : fieldWords)
        if (words.name == name)
            return words.field;
    return std::nullopt;
}

const char* titleOf(WashField field) {
    return wordsOf(field).title;
}

void ColumnMatch::set(WashField field, std::optional<std::size_t> column) {
    if (column)
        std::ranges::replace(m_columns, column, std::optional<std::size_t>{});
    m_columns[static_cast<std::size_t>(field)] = column;
}

bool isOwnTable(const std::vector<std::string>& names) {
    return std::ranges::all_of(fieldWords, [&](const FieldWords& words) {
        return words.own.empty() || std::ranges::find(names, words.own) != names.end();
    });
}

ColumnMatch guessedMatch(const std::vector<std::string>& names) {
    ColumnMatch match;
    if (isOwnTable(names)) {
        for (const FieldWords& words : fieldWords)
            if (!words.own.empty())
                match.set(words.field,
                          static_cast<std::size_t>(std::ranges::find(names, words.own) - names.begin()));
        return match;
    }
    std::vector<bool> taken(names.size());
    for (const Candidate& each : candidates(names)) {
        if (taken[each.column] || match.has(each.field))
            continue;
        taken[each.column] = true;
        match.set(each.field, each.column);
    }
    return match;
}

} // namespace halfcup::exchange
