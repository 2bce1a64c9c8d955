<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>BeachSheet</name>
    <message numerus="yes">
        <source>%n years</source>
        <translation>
            <numerusform>%n year</numerusform>
            <numerusform>%n years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n more under “Open”.</source>
        <comment>severity, flags of a guest</comment>
        <translation>
            <numerusform>%1: %n more under “Open”.</numerusform>
            <numerusform>%1: %n more under “Open”.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more on page %1.</source>
        <comment>findings, flags of guests and decisions</comment>
        <translation>
            <numerusform>%n more on page %1.</numerusform>
            <numerusform>%n more on page %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>%n card has no room for all its words: read it before you hand it out.</numerusform>
            <numerusform>%n cards have no room for all their words: read them before you hand them out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>KitSheet</name>
    <message numerus="yes">
        <source>%1 in all, for %n guests</source>
        <translation>
            <numerusform>%1 in all, for %n guest</numerusform>
            <numerusform>%1 in all, for %n guests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sets (%1)</source>
        <translation>
            <numerusform>%n set (%1)</numerusform>
            <numerusform>%n sets (%1)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n care</numerusform>
            <numerusform>%n care</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ShortNames</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StaffExposure</name>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::AuditDialog</name>
    <message numerus="yes">
        <source>%n entries, none changed or missing.</source>
        <translation>
            <numerusform>%n entry, neither changed nor missing.</numerusform>
            <numerusform>%n entries, none changed or missing.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::BookingImportDialog</name>
    <message numerus="yes">
        <source>&amp;Add %n guests</source>
        <translation>
            <numerusform>&amp;Add %n guest</numerusform>
            <numerusform>&amp;Add %n guests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows with errors</source>
        <translation>
            <numerusform>%n row with an error</numerusform>
            <numerusform>%n rows with errors</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n there already</source>
        <translation>
            <numerusform>%n there already</numerusform>
            <numerusform>%n there already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %n guests</source>
        <translation>
            <numerusform>Add %n guest</numerusform>
            <numerusform>Add %n guests</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::BriefingTab</name>
    <message numerus="yes">
        <source>%n cards</source>
        <translation>
            <numerusform>%n card</numerusform>
            <numerusform>%n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n refused: a stop stands</source>
        <translation>
            <numerusform>%n refused: a stop stands</numerusform>
            <numerusform>%n refused: a stop stands</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages</source>
        <translation>
            <numerusform>%n page</numerusform>
            <numerusform>%n pages</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n guests are in no group and stand on no sheet.</source>
        <translation>
            <numerusform>%n guest is in no group and stands on no sheet.</numerusform>
            <numerusform>%n guests are in no group and stand on no sheet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages saved to %1</source>
        <translation>
            <numerusform>%n page saved to %1</numerusform>
            <numerusform>%n pages saved to %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The printer stopped after %n pages.</source>
        <translation>
            <numerusform>The printer stopped after %n page.</numerusform>
            <numerusform>The printer stopped after %n pages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages sent to the printer</source>
        <translation>
            <numerusform>%n page sent to the printer</numerusform>
            <numerusform>%n pages sent to the printer</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>%n card has no room for all its words: read it before you hand it out.</numerusform>
            <numerusform>%n cards have no room for all their words: read them before you hand them out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::BulkPage</name>
    <message numerus="yes">
        <source>%n guests selected</source>
        <translation>
            <numerusform>%n guest selected</numerusform>
            <numerusform>%n guests selected</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put %n guests into a group</source>
        <translation>
            <numerusform>Put %n guest into a group</numerusform>
            <numerusform>Put %n guests into a group</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Hand out %n cylinders</source>
        <translation>
            <numerusform>Hand out %n cylinder</numerusform>
            <numerusform>Hand out %n cylinders</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::CardEditor</name>
    <message numerus="yes">
        <source>Cards of %n guests</source>
        <translation>
            <numerusform>Card of %n guest</numerusform>
            <numerusform>Cards of %n guests</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::CrewPanel</name>
    <message numerus="yes">
        <source>%n groups</source>
        <translation>
            <numerusform>%n group</numerusform>
            <numerusform>%n groups</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n staff</source>
        <translation>
            <numerusform>%n staff</numerusform>
            <numerusform>%n staff</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n care</numerusform>
            <numerusform>%n care</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::DebriefTab</name>
    <message numerus="yes">
        <source>%n guests will be planned with the rate breathed here.</source>
        <translation>
            <numerusform>%n guest will be planned with the rate breathed here.</numerusform>
            <numerusform>%n guests will be planned with the rate breathed here.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GroupList</name>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n guest</numerusform>
            <numerusform>%n guests</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestScreen</name>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::KnownGuestList</name>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation>
            <numerusform>%n session</numerusform>
            <numerusform>%n sessions</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::PeopleDialog</name>
    <message numerus="yes">
        <source>%Ln guests</source>
        <translation>
            <numerusform>%Ln guest</numerusform>
            <numerusform>%Ln guests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln found</source>
        <translation>
            <numerusform>%Ln found</numerusform>
            <numerusform>%Ln found</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dives before</source>
        <translation>
            <numerusform>%n dive before</numerusform>
            <numerusform>%n dives before</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests are due for erasure by the centre&apos;s periods. Nothing is erased by itself.</source>
        <translation>
            <numerusform>%Ln guest is due for erasure by the centre&apos;s periods. Nothing is erased by itself.</numerusform>
            <numerusform>%Ln guests are due for erasure by the centre&apos;s periods. Nothing is erased by itself.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::PressureChart</name>
    <message numerus="yes">
        <source>and %n more in the table</source>
        <translation>
            <numerusform>and %n more in the table</numerusform>
            <numerusform>and %n more in the table</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::RemovalDialog</name>
    <message numerus="yes">
        <source>%n copies in Records &gt; Copies of the records may still hold this guest. Delete them there, or they bring the guest back when one is restored.</source>
        <translation>
            <numerusform>%n copy in Records &gt; Copies of the records may still hold this guest. Delete it there, or it brings the guest back when it is restored.</numerusform>
            <numerusform>%n copies in Records &gt; Copies of the records may still hold this guest. Delete them there, or they bring the guest back when one is restored.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::RosterTab</name>
    <message numerus="yes">
        <source>Remove %n guests</source>
        <translation>
            <numerusform>Remove %n guest</numerusform>
            <numerusform>Remove %n guests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n guest</numerusform>
            <numerusform>%n guests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Added %n guests from the list</source>
        <translation>
            <numerusform>Added %n guest from the list</numerusform>
            <numerusform>Added %n guests from the list</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::ScreeningPage</name>
    <message numerus="yes">
        <source>%n still open</source>
        <translation>
            <numerusform>%n still open</numerusform>
            <numerusform>%n still open</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::SessionLine</name>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n care</numerusform>
            <numerusform>%n care</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ready · %n care</source>
        <translation>
            <numerusform>Ready · %n care</numerusform>
            <numerusform>Ready · %n care</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n set aside</source>
        <translation>
            <numerusform>%n set aside</numerusform>
            <numerusform>%n set aside</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::StockDialog</name>
    <message numerus="yes">
        <source>%n handed out</source>
        <translation>
            <numerusform>%n handed out</numerusform>
            <numerusform>%n handed out</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::VaultActions</name>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n answers an older version kept open are sealed now.</source>
        <translation>
            <numerusform>%n answer an older version kept open is sealed now.</numerusform>
            <numerusform>%n answers an older version kept open are sealed now.</numerusform>
        </translation>
    </message>
</context>
</TS>
