import Bastewright.Parts

// A value of a page of the guide, by its key.
FieldTile {
    required property string key
    required property list<string> options
    required label
    required kind
    required value
    required optional

    objectName: "field-" + key
}
