/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-6
 *~A:-6
 *~F:-4
 +:2
 +~ a:-6
 +~0:5
 +~<:-1
 +~=:-4
 +~A:-6
 +~F:-8
 +~W:-7
 .:6
 .~%:5
 .~0:3
 ::1
 :~ a:4
 :~ about:-5
 :~ all:6
 :~ as:-2
 :~ do:-1
 :~ does:-2
 :~ g:-3
 :~ goggl:-6
 :~ good:-7
 :~ half:6
 :~ i'd:3
 :~ i:5
 :~ in:2
 :~ is:-9
 :~ its:-1
 :~ ive:1
 :~ kitchen:2
 :~ me:-8
 :~ melt:-8
 :~ no:2
 :~ none:7
 :~ one:-5
 :~ re:-2
 :~ soap:-4
 :~ the:-1
 :~ too:2
 :~ weigh:1
 :~ what:2
 :~ why:-4
 :~ winter:-2
 :~ with:1
 :~ yes:5
 :~%:-4
 :~0:-5
 :~<:-3
 :~=:-5
 :~>:-7
 :~N:2
 :~S:-5
 :~T:-3
 :~W:-2
 :~X:-2
 :~b:-6
 :~d:-3
 :~l:-9
 :~t:-4
 :~v:-7
 :~w:3
 =:-2
 =~ =:-6
 =~0:-6
 =~=:-5
 =~>:-2
 =~l:-7
 ?:-3
 a:-2
 about:-2
 about~ a:5
 about~ an:-3
 about~ it:-3
 about~ right:-3
 about~ superfat:-9
 about~ the:3
 about~ to:-4
 about~%:-3
 about~0:-1
 about~<:4
 about~>:-6
 about~F:-5
 about~b:4
 about~d:-3
 about~t:-6
 about~v:2
 about~w:2
 above:5
 above~ is:2
 above~d:-7
 abt:-9
 accident:4
 accord:7
 accord~ to:7
 account:7
 acros:4
 acros~ the:6
 actual:9
 actual~N:4
 add:-1
 added:7
 added~ a:1
 added~ it:3
 added~ the:1
 added~<:-7
 added~=:-9
 added~v:6
 added~w:5
 adds:-10
 adds~ up:-9
 add~ a:2
 add~ it:-8
 add~ the:-5
 add~ to:3
 add~ up:1
 add~<:-4
 add~=:-4
 add~F:3
 add~w:-6
 advice:1
 afresh:-7
 after:1
 afternoon:1
 afterward:2
 after~ a:-2
 after~ an:1
 after~ christma:-6
 after~ cook:1
 after~ cure:-2
 after~ i:3
 after~ it:8
 after~ last:1
 after~ pour:3
 after~ strain:3
 after~ that:-7
 after~ the:-1
 after~ this:-9
 after~0:-5
 after~t:-5
 again:-2
 against:2
 against~ the:5
 again~ ::2
 again~ ?:2
 again~ after:-1
 again~ and:-9
 again~ for:-6
 again~ so:-1
 again~ with:5
 age:-9
 ages:-1
 ages~ to:-5
 ago:-9
 ago~ and:-1
 agre:-3
 agree:-6
 agree~ with:-5
 aim:6
 aim~ at:1
 aim~ for:7
 air:-3
 air~ cupboard:-1
 aisle:4
 aleppo:-5
 alike:8
 alkali:-6
 all:1
 allergen:-7
 allergic:8
 allergic~ to:-7
 allergy:6
 allotment:-4
 allow:-5
 all~ ::-3
 all~ ?:-1
 all~ and:4
 all~ at:3
 all~ but:8
 all~ by:-8
 all~ day:-6
 all~ down:8
 all~ fats:-9
 all~ first:1
 all~ g:-9
 all~ good:-7
 all~ grams:-9
 all~ i:4
 all~ in:-1
 all~ is:-9
 all~ my:-5
 all~ of:-2
 all~ on:-7
 all~ over:-4
 all~ right:-10
 all~ that:-3
 all~ the:-3
 all~ there:3
 all~ together:-9
 all~ told:-3
 all~ up:-4
 all~ week:2
 all~ weigh:-2
 all~0:2
 all~F:3
 all~L:-2
 all~W:1
 all~b:-2
 all~e:8
 almost:2
 alone:-2
 along:10
 along~ the:-1
 along~ with:6
 already:7
 already~ dissolv:4
 already~ in:4
 already~ put:7
 already~ so:2
 alright:-5
 alright~ ?:-1
 alright~ for:-4
 also:4
 also~w:6
 alter:3
 although:4
 altogether:-9
 alu:-2
 aluminium:-8
 alway:-3
 alway~ did:-1
 alway~ said:-5
 alway~ with:4
 am:2
 american:-8
 ammonia:-5
 amount:3
 amount~ ?:-4
 amount~ g:-3
 amount~ of:-2
 am~ a:-4
 am~ from:-7
 an:-2
 and~ a:-3
 and~ about:-4
 and~ add:-7
 and~ added:-1
 and~ again:3
 and~ all:8
 and~ an:-5
 and~ another:-9
 and~ asked:-3
 and~ at:-9
 and~ bang:-1
 and~ blend:-5
 and~ both:-1
 and~ call:2
 and~ came:-7
 and~ clear:-3
 and~ cook:4
 and~ cool:4
 and~ couldnt:-1
 and~ cut:-1
 and~ did:-1
 and~ do:2
 and~ does:-3
 and~ dont:-5
 and~ even:2
 and~ everyth:-2
 and~ fill:3
 and~ for:1
 and~ forgot:-4
 and~ found:4
 and~ gave:3
 and~ give:5
 and~ glov:-1
 and~ goes:-2
 and~ goggl:-2
 and~ got:-11
 and~ half:-6
 and~ hard:-6
 and~ has:4
 and~ have:-5
 and~ he:3
 and~ her:-5
 and~ his:-7
 and~ honest:-7
 and~ how:-5
 and~ i'd:-1
 and~ i:5
 and~ if:4
 and~ im:1
 and~ in:-3
 and~ into:4
 and~ is:1
 and~ it:-4
 and~ itll:-5
 and~ its:-3
 and~ keep:-6
 and~ kept:1
 and~ last:-3
 and~ left:4
 and~ let:-4
 and~ lost:-7
 and~ me:-3
 and~ melt:-5
 and~ mixed:-3
 and~ neither:4
 and~ never:-2
 and~ nobody:-2
 and~ none:5
 and~ noth:-2
 and~ now:4
 and~ of:4
 and~ off:-4
 and~ once:-2
 and~ one:-2
 and~ only:2
 and~ pour:3
 and~ put:4
 and~ said:-3
 and~ says:3
 and~ see:-6
 and~ she:-5
 and~ since:2
 and~ smell:-2
 and~ so:1
 and~ soap:-4
 and~ some:3
 and~ someth:7
 and~ sprinkle:-2
 and~ start:-4
 and~ stay:-3
 and~ still:-1
 and~ stirr:-8
 and~ straight:-6
 and~ strain:-4
 and~ stuck:6
 and~ swear:-6
 and~ tell:-4
 and~ that:6
 and~ thats:2
 and~ the:-2
 and~ then:4
 and~ ther:6
 and~ there:5
 and~ they:-5
 and~ this:6
 and~ those:2
 and~ tipp:6
 and~ to:-3
 and~ together:1
 and~ took:8
 and~ turn:-3
 and~ use:2
 and~ used:2
 and~ wait:-3
 and~ want:-5
 and~ wants:-4
 and~ warm:-1
 and~ was:1
 and~ we:1
 and~ weigh:1
 and~ went:-4
 and~ whats:2
 and~ when:-3
 and~ whether:-6
 and~ white:-6
 and~ will:-2
 and~ with:-4
 and~ would:-7
 and~ yes:-2
 and~ you:-1
 and~%:-2
 and~0:1
 and~<:1
 and~=:-5
 and~>:-1
 and~A:-3
 and~B:-1
 and~F:-4
 and~L:-7
 and~N:7
 and~S:-5
 and~W:1
 and~X:1
 and~b:-10
 and~e:-2
 and~l:-8
 and~t:-5
 and~v:4
 and~w:-2
 another:4
 another~ day:-5
 another~0:8
 another~<:7
 another~t:-6
 another~v:-2
 another~w:-8
 answer:-8
 answer~ ::-5
 answer~ is:-2
 answer~ the:-5
 any:-1
 anybody:1
 anyhow:-3
 anyone:-5
 anyone~ know:1
 anyone~ tried:-3
 anyth:-6
 anyth~ in:-3
 anyth~ off:-4
 anyth~ wrong:-4
 anyway:-5
 anywhere:-2
 anywhere~ near:-6
 any~ more:1
 any~A:-2
 any~F:-1
 any~S:-7
 an~ earlier:-6
 an~ envelope:-4
 an~ extra:4
 an~ eye:-3
 an~ hour:-7
 an~ old:-6
 an~ older:-1
 an~I:3
 an~L:3
 apart:-9
 approx:1
 app~ puts:-4
 april:-2
 apron:-6
 are:-2
 arent:1
 are~ at:-1
 are~ dry:5
 are~ for:4
 are~ from:-8
 are~ full:-1
 are~ in:-7
 are~ no:-4
 are~ not:-8
 are~ now:2
 are~ right:-5
 are~ still:-8
 are~ the:-3
 are~ what:1
 are~0:1
 are~=:-4
 are~F:-2
 argu:-9
 arithmetic:-8
 arm:-8
 around:-4
 around~ the:-4
 around~%:1
 around~0:-4
 around~d:-3
 around~w:-1
 arriv:-7
 as:3
 ash:-9
 ashes:-7
 ash~ and:-4
 ash~ on:-7
 aside:-5
 ask:-4
 asked:-8
 asked~ about:-6
 asked~ for:-2
 asked~ if:-2
 asked~ whether:-5
 asks:-8
 ask~ ::-2
 ask~ about:-6
 ask~ for:-5
 ask~ her:-1
 ask~ you:-4
 asleep:-7
 assay:8
 as~ a:1
 as~ alway:6
 as~ anyth:-3
 as~ before:6
 as~ ever:-7
 as~ far:-3
 as~ i:5
 as~ if:3
 as~ in:-1
 as~ is:6
 as~ it:-4
 as~ list:-3
 as~ long:-9
 as~ my:-2
 as~ on:-6
 as~ print:6
 as~ promis:-6
 as~ snow:-4
 as~ the:2
 as~ well:2
 as~ written:-4
 as~ you:-7
 as~%:-1
 as~0:3
 as~A:4
 as~F:-3
 as~I:-8
 as~L:-3
 as~X:-5
 at:-2
 ate:8
 attempt:-7
 attempt~0:-4
 attic:-3
 at~ a:-8
 at~ about:1
 at~ all:-2
 at~ around:-4
 at~ christma:-2
 at~ church:-8
 at~ day:-7
 at~ easter:-6
 at~ first:-8
 at~ half:-8
 at~ home:2
 at~ hour:2
 at~ it:5
 at~ least:-3
 at~ light:2
 at~ liquid:-3
 at~ me:3
 at~ minute:-1
 at~ my:-3
 at~ once:-5
 at~ our:-6
 at~ room:-4
 at~ rough:-1
 at~ school:-5
 at~ that:1
 at~ the:1
 at~ thin:-8
 at~ this:-5
 at~ trace:5
 at~ week:-7
 at~ work:-1
 at~%:4
 at~0:-4
 at~<:8
 at~=:-2
 at~b:1
 at~d:-4
 at~e:3
 at~t:-10
 at~w:-4
 august:2
 aunt:-5
 aunti:-4
 auntie:5
 aunts:1
 aunt~ in:-4
 aunt~ says:-6
 aunt~ sent:2
 autumn:-10
 average:-3
 away:-2
 away~ and:2
 a~ ::-7
 a~ bad:-8
 a~ bag:5
 a~ bar:-9
 a~ batch:-7
 a~ battery:1
 a~ beginner:-3
 a~ big:-2
 a~ bigger:-1
 a~ bit:-2
 a~ blanket:-3
 a~ blend:7
 a~ bottle:1
 a~ bowl:-8
 a~ box:-7
 a~ brick:-1
 a~ bucket:-7
 a~ can:4
 a~ candle:-7
 a~ carton:-2
 a~ castile:1
 a~ cheese:-8
 a~ chip:-5
 a~ class:-6
 a~ clean:3
 a~ cold:-6
 a~ corner:-9
 a~ cow:1
 a~ crack:-2
 a~ crisp:-4
 a~ crumb:-6
 a~ crust:9
 a~ customer:-5
 a~ dark:-5
 a~ day:-3
 a~ different:-4
 a~ drawer:-5
 a~ dream:-3
 a~ drop:4
 a~ dry:-9
 a~ face:-8
 a~ fair:4
 a~ fami:-4
 a~ fan:-3
 a~ farm:2
 a~ few:5
 a~ fifth:2
 a~ finger:-6
 a~ fresh:-2
 a~ friend:-2
 a~ full:-2
 a~ glass:2
 a~ glug:4
 a~ good:10
 a~ half:3
 a~ handful:-1
 a~ heap:9
 a~ hole:-3
 a~ hurry:-6
 a~ jam:-8
 a~ jug:-2
 a~ knob:7
 a~ ladle:5
 a~ lady:-5
 a~ library:-5
 a~ lid:-3
 a~ lidd:-2
 a~ light:-3
 a~ line:1
 a~ list:1
 a~ little:4
 a~ loaf:-4
 a~ long:-1
 a~ lot:-6
 a~ lump:6
 a~ man:-3
 a~ milk:-2
 a~ minute:-4
 a~ mix:6
 a~ month:-11
 a~ mould:-5
 a~ mug:7
 a~ new:-7
 a~ nice:-2
 a~ night:-5
 a~ number:-1
 a~ page:-7
 a~ paper:-6
 a~ paste:-2
 a~ pdf:-3
 a~ pencil:-6
 a~ photo:-8
 a~ piece:2
 a~ pinch:-2
 a~ plain:-8
 a~ pot:1
 a~ proper:-5
 a~ puddle:5
 a~ quarter:6
 a~ question:-3
 a~ reader:-5
 a~ ready:3
 a~ recipe:-2
 a~ rock:-3
 a~ round:-1
 a~ row:-7
 a~ scale:-7
 a~ second:-4
 a~ sensible:-3
 a~ shade:-3
 a~ shoe:-4
 a~ shoebox:-4
 a~ silicone:-7
 a~ sink:-5
 a~ skin:-3
 a~ skull:-5
 a~ slip:2
 a~ slow:-5
 a~ small:1
 a~ smaller:-2
 a~ soap:-7
 a~ soft:-5
 a~ softer:-6
 a~ spatula:-6
 a~ spill:-1
 a~ splash:6
 a~ spoon:-3
 a~ spoonful:-2
 a~ steel:-7
 a~ stick:3
 a~ stir:-3
 a~ superfat:5
 a~ tenth:5
 a~ thermometer:-6
 a~ thin:-3
 a~ thing:-5
 a~ third:4
 a~ time:-7
 a~ tin:1
 a~ tiny:4
 a~ touch:-3
 a~ towel:-1
 a~ tray:-4
 a~ treat:-5
 a~ tub:-6
 a~ twentieth:3
 a~ typo:2
 a~ very:-6
 a~ video:-3
 a~ volcano:-4
 a~ warm:-4
 a~ water:-3
 a~ week:-7
 a~ wet:3
 a~ white:-2
 a~ whole:1
 a~ wire:-2
 a~ woman:-7
 a~ wooden:-1
 a~ year:-9
 a~ yes:-3
 a~ zap:-4
 a~%:2
 a~0:5
 a~<:6
 a~=:-7
 a~>:1
 a~A:-5
 a~F:-3
 a~K:-2
 a~L:-3
 a~N:9
 a~S:1
 a~X:2
 a~b:3
 a~e:-8
 a~r:2
 a~t:-5
 a~v:-1
 a~w:5
 babcia:-5
 babi:-8
 baby:2
 back:-3
 background:-3
 back~ ::-5
 back~ a:1
 back~ and:4
 back~ at:-4
 back~ for:2
 back~ in:-7
 back~ of:-5
 back~ on:-8
 back~ out:5
 back~ till:9
 back~ to:-6
 back~ up:4
 bacon:-6
 badly:-1
 bag:7
 bags:-4
 bag~ of:6
 bag~ says:-2
 bak:-8
 bakery:-9
 bak~ paper:-8
 balanc:-3
 balance:4
 balanc~ ?:-3
 balcony:1
 balls:-6
 balm:-5
 bang:-8
 bang~ it:-4
 bar:-5
 bare:-7
 bare~ got:-2
 barn:-5
 barrel:-6
 bars:-9
 bars~ +:-7
 bars~ ::-6
 bars~ about:-1
 bars~ after:-1
 bars~ and:-5
 bars~ are:-4
 bars~ at:-2
 bars~ come:-4
 bars~ each:-6
 bars~ for:-6
 bars~ from:-5
 bars~ i:-2
 bars~ in:-3
 bars~ of:-6
 bars~ on:-4
 bars~ out:-6
 bars~ so:-4
 bars~ to:-4
 bars~ went:-7
 bars~ were:2
 bars~ with:-8
 bars~0:-7
 bars~t:-3
 bars~w:-5
 bar~ ::-2
 bar~ ?:-7
 bar~ all:-4
 bar~ and:-2
 bar~ at:-3
 bar~ for:-7
 bar~ from:-6
 bar~ i:3
 bar~ in:-4
 bar~ is:2
 bar~ no:-2
 bar~ of:-7
 bar~ since:-2
 bar~ so:2
 bar~ with:3
 bar~0:-5
 base:-1
 basic:-4
 bastille:-7
 batch:-5
 batch~ ::-3
 batch~ and:-7
 batch~ before:-7
 batch~ but:4
 batch~ ever:3
 batch~ had:-2
 batch~ i:4
 batch~ in:4
 batch~ is:4
 batch~ log:-4
 batch~ no:-4
 batch~ of:-5
 batch~ record:-3
 batch~ sheet:-6
 batch~ that:-1
 batch~ was:-4
 batch~ with:-3
 batch~0:-9
 bath:-9
 bathroom:5
 bathroom~ scale:7
 batter:-4
 batteri:-5
 battery:4
 battery~ died:6
 bazaar:-4
 bc:8
 bc~ i:1
 be:2
 beach:-6
 beads:6
 beaker:4
 bear:-6
 beard:-4
 bear~ with:-7
 beat:-2
 became:4
 became~0:7
 because~ a:-5
 because~ he:-8
 because~ i:-3
 because~ it:7
 because~ its:-4
 because~ last:2
 because~ my:5
 because~ of:-2
 because~ she:-3
 because~ the:3
 because~F:-8
 become:-1
 bed:-6
 bee:-7
 beech:-2
 beef:-7
 beef~=:-4
 beekeeper:-8
 been:2
 been~ at:4
 been~ in:2
 been~ mak:-7
 been~ on:-6
 been~ open:7
 been~ stand:5
 been~ told:-5
 been~t:-1
 bees:-3
 before:-1
 beforehand:-6
 before~ and:2
 before~ anyone:-7
 before~ i:-5
 before~ it:2
 before~ pour:6
 before~ saturday:-6
 before~ she:-1
 before~ so:-8
 before~ that:-7
 before~ the:3
 before~ they:-6
 before~ this:-9
 before~ we:-3
 before~ weigh:-8
 before~ with:-5
 before~ you:-11
 before~t:-5
 began:-5
 begin:-4
 beginn:-1
 beginner':-6
 beginner:-9
 behav:-6
 behind:-2
 behind~ the:2
 beige:-9
 being:-3
 believe:-1
 bell:2
 belong:-2
 belong~ to:2
 below:-5
 below~ the:-3
 below~d:-5
 bench:2
 besid:5
 beside:6
 beside~ it:2
 best:-11
 best~ before:-5
 bet:-6
 better:-5
 better~ than:2
 between~ the:4
 between~0:6
 be~ ?:-7
 be~ a:6
 be~ about:-6
 be~ bother:3
 be~ clear:-6
 be~ cut:-2
 be~ exact:6
 be~ for:3
 be~ gentle:-3
 be~ honest:-2
 be~ hot:-4
 be~ in:-8
 be~ mild:-5
 be~ ok:-3
 be~ on:6
 be~ patient:-7
 be~ right:2
 be~ sure:-2
 be~ the:-5
 be~ too:-5
 be~%:-10
 be~0:6
 be~N:8
 be~b:8
 be~e:9
 be~w:4
 bicycle:-6
 big:2
 bigger:2
 bigger~ pot:-4
 bigger~ than:5
 big~ batch:-8
 big~ kettle:5
 big~ one:2
 big~ pot:-3
 bin:-2
 binn:4
 bin~ it:-3
 birds:-3
 birthday:-3
 biscuit:-7
 bit:1
 bite:-5
 bites:-2
 bits~ in:1
 bits~ of:2
 bit~ at:-5
 bit~ by:-3
 bit~ greasy:-1
 bit~ less:-1
 bit~ like:-4
 bit~ more:1
 bit~ of:2
 bit~ on:-7
 bit~ over:-7
 bit~ so:-3
 bit~ soft:-6
 bit~ the:2
 bit~ under:-2
 black:-3
 blame:-8
 blame~ the:-6
 blanket:-6
 blend:-1
 blender:-5
 blender~ and:-6
 blender~ died:-4
 blender~t:-5
 blend~ and:-7
 blend~ at:-1
 blend~ for:-2
 blend~ pour:-3
 blend~ till:-5
 blend~ to:-2
 blend~ with:8
 blend~t:-5
 blind:3
 blob:-1
 blog:2
 blog~ i:-3
 blood:-6
 blue:-1
 board:2
 boat:5
 body:-1
 boiler:-7
 boil~ down:-2
 boil~ flat:4
 boil~ in:7
 boil~ it:-5
 boil~ off:5
 boil~ over:5
 boil~ the:-4
 bonjour:-3
 bonsoir:-4
 book:-3
 book~ ::-1
 book~ says:-8
 born:-5
 borrow:-1
 boss:-1
 both:-1
 bother:-5
 bother~ to:4
 bother~ with:5
 both~ alkali:-6
 both~ are:-7
 both~ at:1
 both~ feel:-1
 both~ lyes:-2
 both~ of:2
 both~ times:-5
 both~ units:-5
 both~ were:-6
 bottl:-2
 bottle:3
 bottle~ and:4
 bottle~ before:-6
 bottle~ gave:3
 bottle~ in:-7
 bottle~ is:6
 bottle~ of:-2
 bottle~ on:-3
 bottle~ ran:-1
 bottle~ said:5
 bottle~ says:5
 bottle~ was:14
 bottle~ with:-1
 bottl~ of:-4
 bottom:-1
 bought:-3
 bought~ a:-5
 bought~ the:-7
 bought~0:-6
 bought~>:-8
 bowls:3
 bowl~ and:-3
 bowl~ in:-10
 bowl~ is:-5
 bowl~ of:-4
 bowl~ on:6
 bowl~w:3
 box:-2
 boxes:-4
 box~ and:-2
 box~ lined:-2
 box~ with:-4
 box~t:-2
 boy:-1
 boyfriend:-1
 boys:1
 brand:-5
 brave:-2
 bread:-2
 break:-8
 breakfast:-1
 breathe:-4
 brewery:-4
 brick:-1
 brim:-2
 bring:-10
 bring~ it:-3
 bring~ the:-8
 broken:7
 brother':1
 brother:2
 brother~ in:-9
 brought:9
 brown:-9
 brown~ paper:-4
 brush:-4
 btw:4
 bubbl:-5
 bubble:-4
 bubbl~ and:1
 bucket:-4
 bucket~ of:-8
 bucket~ so:-4
 bucket~ with:-7
 burn:-7
 burnt:-2
 burst:-3
 burst~ of:-1
 bus:-4
 but:-2
 butcher:-4
 butcher~ gave:-9
 button:-4
 but~ before:-1
 but~ he:-4
 but~ here:-6
 but~ i'd:-4
 but~ i:2
 but~ im:-7
 but~ is:-6
 but~ it:-4
 but~ its:1
 but~ ive:1
 but~ my:-1
 but~ no:4
 but~ not:-5
 but~ now:-3
 but~ only:-8
 but~ she:-6
 but~ that:-7
 but~ thats:-6
 but~ the:7
 but~ then:3
 but~ there:-5
 but~ they:-5
 but~ this:1
 but~ those:-6
 but~ what:2
 but~ with:-1
 but~0:2
 but~F:-7
 buy~ the:-2
 by:1
 by~ ::-7
 by~ a:9
 by~ accident:4
 by~ bit:-3
 by~ easter:-5
 by~ eye:8
 by~ feel:1
 by~ hand:-7
 by~ it:-5
 by~ itself:3
 by~ me:-5
 by~ mistake:6
 by~ modern:-3
 by~ my:1
 by~ noon:-4
 by~ spoon:-7
 by~ the:4
 by~ then:-4
 by~ today:-3
 by~ volume:1
 by~ week:-5
 by~ weight:-4
 by~0:-1
 by~<:8
 by~N:-4
 by~b:-3
 by~t:-6
 b~ ::4
 b~A:-5
 b~F:-7
 c:-5
 cake:-1
 cakes:-5
 calculat:-1
 calculate:2
 calculator:-7
 call:3
 calls:-11
 calls~ it:-7
 call~ for:-1
 call~ it:6
 call~ that:4
 call~ the:-2
 call~F:4
 came~ back:2
 came~ from:-1
 came~ in:-3
 came~ off:1
 came~ out:-2
 came~ to:8
 came~ up:1
 can:-2
 candl:-8
 candle:-1
 candle~B:-1
 candl~ and:-6
 cannot:-7
 cans:-2
 cant:2
 cant~ be:-2
 cant~ find:4
 cant~ get:-7
 cant~ remember:6
 cant~ say:-1
 cant~ stand:6
 can~ and:1
 can~ anyone:-1
 can~ be:-2
 can~ bear:-3
 can~ is:3
 can~ of:4
 can~ see:3
 can~ somebody:-6
 can~ someone:3
 can~ stand:-6
 can~ still:-3
 can~ tell:-2
 can~ the:-2
 can~ u:1
 can~ use:-4
 can~ you:2
 cap:-2
 capping:-7
 car:-7
 caramel:-6
 carbonate:8
 card:1
 cardboard:1
 card~ for:-5
 card~ is:3
 card~ no:-4
 care:2
 caretaker:-7
 carpet:-3
 carri:5
 carri~ it:4
 carri~ on:4
 carry:-9
 carton:1
 case:-1
 cast:-7
 castile:-7
 cat:-1
 cat~ got:6
 cat~ had:2
 cat~ has:-6
 cat~ is:-4
 caught:1
 cauldron:-4
 caviti:-7
 ceil:-7
 cell:1
 cellar:-10
 certain:4
 certifi:-9
 certificate:6
 chair:-3
 chang:-3
 change:-2
 change~ the:-5
 chang~ ::4
 chang~ my:7
 chang~ the:-7
 charg:-2
 charge:-4
 chat:-3
 cheap:-10
 cheaper:-6
 cheaper~ than:-5
 check:-4
 check~ ::-1
 check~ ?:-1
 check~ before:2
 check~ by:-7
 check~ it:-6
 check~ me:-2
 check~ my:-7
 check~ out:-3
 check~ please:-5
 check~ pls:-4
 check~ that:-5
 check~ the:-5
 check~ this:-4
 check~A:-5
 cheese:-2
 cheese~ wire:-6
 chemist:-8
 chemistry:-3
 chemistry~ teacher:3
 child:-7
 children:-5
 chill:-7
 chip:2
 chips:1
 chisel:-6
 choir:1
 choose:-4
 chopp:-3
 christma:-6
 christma~0:-6
 chuck:3
 chuck~ in:7
 church:-9
 claim:-2
 clarity:-4
 class:-3
 class~ ::-5
 class~ i:-4
 clean:-5
 clean~ the:-6
 clean~ up:2
 clean~F:-5
 clear:-8
 clearer:1
 clear~ after:-2
 clear~ and:-7
 clear~ as:-9
 clear~ at:-8
 clear~ in:-5
 climb:-10
 climb~ out:-2
 climb~ to:-6
 cling:-4
 cling~ film:-4
 cling~ to:2
 clock:-4
 clos:-1
 close:-4
 close~ to:-6
 cloth:-5
 cloud:3
 cloudy~ for:-4
 club:-2
 clubs:-5
 co:-1
 coat:-7
 coins:2
 cold:-9
 cold~ and:-1
 cold~ from:-8
 cold~ press:-6
 cold~ proces:-5
 cold~L:4
 cold~W:-4
 colleague:-6
 colloidal:1
 colour:-10
 column:-5
 com:4
 combine:-2
 combine~ blend:-2
 comes~ by:2
 comes~ from:-7
 comes~ in:1
 comes~ out:4
 comes~ to:1
 come~ back:-7
 come~ down:-4
 come~ off:-3
 come~ out:3
 comma:1
 comma~ is:-7
 comment:-7
 compar:-3
 compare:-8
 compar~ with:1
 complain:-6
 complaint:-7
 complain~ about:-4
 complete:3
 computer:-2
 confetti:-4
 confirm:-9
 confirm~ the:-6
 confus:1
 contain:7
 convert:-10
 cook:2
 cooker:-3
 cooker~ ::-3
 cooker~ before:4
 cooker~ is:-4
 cooker~ on:-3
 cooks:-2
 cook~ ::-7
 cook~ ?:-7
 cook~ about:2
 cook~ and:-2
 cook~ at:-5
 cook~ for:-4
 cook~ i:-4
 cook~ in:-7
 cook~ is:4
 cook~ it:2
 cook~ on:-5
 cook~ once:-3
 cook~ part:-7
 cook~ so:7
 cook~ the:-6
 cook~ until:-1
 cook~ was:-10
 cook~ when:-7
 cook~ with:1
 cook~=:-1
 cook~F:-5
 cook~t:-4
 cool:-3
 cools:-7
 cool~ down:-1
 cool~ i:-2
 cool~ it:-7
 cool~ the:-8
 cool~ to:-2
 cool~ under:-3
 copi:4
 copi~ from:3
 copi~ it:-2
 copi~ off:2
 copi~ out:-7
 copi~ straight:-8
 copi~ this:-1
 copy:3
 cork:-6
 corner:-12
 correct:1
 correction:8
 correct~ for:-1
 correct~ or:-3
 cos:8
 cost:-6
 costs:-14
 costs~ me:-3
 costs~0:-5
 costs~t:-4
 cost~ ::-6
 cost~ eur:-2
 cost~ me:-4
 cost~ per:-2
 cost~ sheet:-4
 cost~0:-6
 cost~t:-2
 could:-1
 couldnt:7
 couldnt~ be:7
 couldnt~ get:6
 couldnt~ tell:2
 could~ be:8
 could~ have:-5
 could~ not:8
 could~ someone:-5
 could~ the:-6
 could~ you:-3
 council:-5
 count:1
 counter:4
 country:2
 county:-4
 count~ in:-1
 count~ it:6
 count~ the:-4
 count~ with:5
 course:-7
 course~ i:-4
 course~ in:-3
 cousin:-2
 cousin~ so:1
 cover:-5
 cover~ cut:-1
 cover~ it:-4
 cover~ with:-7
 cow:2
 cows:-7
 cp:-5
 crack:-3
 crackl:2
 crackling:1
 crack~ on:-7
 craft:-1
 crate:-7
 creamy:-7
 cried:-7
 crisp:-4
 crisp~ tube:-4
 crock:-3
 crockpot:-3
 crock~ pot:1
 cross:-3
 cross~ out:-1
 crumb:-2
 crumbl:-7
 crumble:-6
 crumb~ and:6
 crumb~ at:3
 crush:-6
 crust:8
 crystal:-4
 cubes:-6
 cubes~ and:-5
 cubes~ of:1
 cubes~ the:-5
 cubes~w:-4
 cup:2
 cupboard~ and:3
 cupcake:-7
 cups:-3
 cup~ and:-7
 cup~ weigh:-5
 cup~ with:-5
 cur:-7
 cure:-8
 cured:-5
 cure~ ::-2
 cure~ for:-3
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-5
 custard:-6
 customer:-11
 cuts:-6
 cutt:-5
 cutter:-7
 cut~ ::-4
 cut~ after:-2
 cut~ at:-7
 cut~ in:-3
 cut~ into:-6
 cut~ it:1
 cut~ next:-2
 cut~ off:-2
 cut~ on:-4
 cut~ the:7
 cut~ them:-3
 cut~ too:-6
 cut~ with:-5
 cut~0:-6
 cut~b:-5
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-2
 dads:-2
 dads~t:-2
 dag:-2
 dag~ here:-1
 dairy:6
 damp:3
 dare:3
 dark:-10
 das:-8
 date:-7
 dates:-7
 date~ ::-2
 date~t:-5
 daughter':-8
 daughter:3
 daughter~ who:-6
 day:-3
 days:-6
 day~ and:-3
 day~ at:-5
 day~ before:3
 day~ i:-5
 day~ it:-4
 day~ so:2
 day~ then:-4
 day~0:-6
 day~t:-5
 de:-5
 dead:-4
 deal:5
 dear:3
 dear~ all:2
 dear~ group:-3
 december:-3
 decent:-8
 decid:-1
 decimal:-7
 deep:2
 degre:-7
 demineralis:-8
 demonstration:1
 dent:-8
 deodoris:-9
 diary:-3
 dictat:3
 dictat~ this:-3
 did:3
 didnt:4
 didnt~ weigh:6
 did~ and:1
 did~ for:-1
 did~ i:-4
 did~ in:-7
 did~ my:-1
 did~ not:1
 did~ that:-1
 did~ the:6
 did~ this:-1
 did~ you:-7
 did~0:1
 did~=:-3
 died:2
 died~ at:3
 difference:-5
 different:-9
 digit:-2
 digital:-9
 dilut:-3
 dilute:-7
 dilution:3
 dinner:3
 disaster:-9
 discount:3
 dish~ soap:6
 display:6
 dissolv:4
 dissolve:4
 dissolve~ it:-7
 dissolve~ the:4
 dissolve~=:-7
 dissolv~ in:1
 dissolv~ together:-1
 dissolv~<:3
 dissolv~=:-4
 do:-4
 doctor:-8
 does:-5
 doesnt:-3
 doesnt~ mind:-5
 doesnt~ smell:-4
 does~ anybody:-4
 does~ anyone:2
 does~ her:-3
 does~ hers:1
 does~ it:-4
 does~ my:-5
 does~ not:-2
 does~ the:-4
 does~ this:-1
 does~%:-7
 does~F:-6
 does~b:-6
 does~w:1
 dog:1
 dogs:-7
 dog~ got:6
 doing:2
 doing~ it:-4
 doing~ the:2
 doing~ this:3
 done:-5
 done~ and:1
 dont:-3
 dont~ ask:5
 dont~ be:-7
 dont~ care:3
 dont~ get:4
 dont~ know:5
 dont~ laugh:-1
 dont~ panic:-7
 dont~ trust:-5
 dont~ want:-8
 door:-4
 doorbell:3
 doors:-8
 dos:-2
 dose:7
 dose~ of:8
 dot:-6
 doubl:8
 double:-7
 double~ boiler:-7
 double~ check:-3
 doubt:-7
 down:2
 down~ and:-3
 down~ by:6
 down~ the:-1
 down~ to:1
 down~ with:4
 do~ ?:-5
 do~ a:2
 do~ for:-5
 do~ i:3
 do~ in:-9
 do~ it:-1
 do~ not:-4
 do~ the:-5
 do~ this:-6
 do~ we:-4
 do~ with:-6
 do~ you:-4
 do~F:-4
 draft:-7
 drag:-6
 drain:4
 drama:-5
 drank:4
 draw:1
 drawer:-3
 drawer~ lined:-2
 drawn:4
 dream:-5
 drew:-5
 dried:-2
 drill:-4
 drink:-4
 drip:-6
 drips:-9
 drop:-1
 dropp:5
 dropp~ below:-3
 dropp~ the:2
 drops:-2
 drops~ of:3
 drop~ of:2
 drop~ the:-5
 drop~ to:-3
 drove:-2
 drown:-6
 drum:6
 dry:3
 dry~ cup:-3
 dry~ hands:5
 dry~ skin:-6
 dry~ so:1
 dry~ until:3
 dual:1
 dual~A:1
 duck:-8
 dump:-4
 dur:4
 dust:5
 e:-5
 each:-1
 each~ and:-4
 each~ of:-4
 each~ time:-1
 earlier:-4
 early:-9
 easier:-6
 easter:-6
 easy:-8
 eat:-1
 eats:-8
 eczema:3
 edge:-3
 edges:-2
 edit:1
 edition:1
 edit~ ::2
 either:4
 elbow:-6
 else:1
 else~ no:-3
 empti:5
 empty:-2
 empty~ and:-3
 emulsion:-7
 enamel:-8
 enamel~ pot:-5
 end:3
 ended:6
 ended~ up:-2
 ends:-10
 end~ ?:-4
 end~ after:1
 end~ and:3
 end~ i:-1
 end~ is:-11
 end~ it:8
 end~ of:-3
 end~ piece:-5
 english:-4
 english~ i:-5
 english~ is:-5
 enough:-2
 enough~ ?:-4
 enough~ for:-4
 enough~ or:-6
 enough~ to:-3
 enough~A:-3
 entire:-6
 entry:-4
 envelope:-4
 equal~ parts:1
 equal~ weight:-6
 error:-3
 eur:-4
 euro:-6
 even:-7
 evening:-4
 even~ all:-4
 even~ class:-4
 even~ in:-5
 ever:-11
 every:-6
 everybody:-8
 everyday:-4
 everyday~ bar:-4
 everyone:-7
 everyone~ who:2
 everyth:4
 everyth~ ::-3
 everyth~ and:-4
 everyth~ at:1
 everyth~ else:1
 everyth~ in:-5
 everyth~ is:2
 everyth~ was:-4
 everywhere:-5
 every~ one:5
 every~ time:2
 every~t:-4
 ex:-5
 exact:-7
 exact~ as:-10
 exact~ like:1
 exact~ one:-2
 exam:-6
 except:8
 except~ for:-1
 except~ that:-2
 except~ the:4
 exces:2
 excuse:-6
 excuse~ my:-3
 excuse~ the:-5
 expect:-4
 expensive:-3
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:7
 extra~ virgin:-5
 extra~A:-3
 extra~F:-4
 eye:7
 eyebrow:-6
 eyes:-3
 eye~ over:-3
 f:-6
 face:-5
 faces:-7
 face~ bar:-5
 facial:3
 facial~ bar:-5
 fact:5
 faded:-8
 fades:-4
 fail:2
 fails:-4
 fail~ me:-3
 faint:-7
 faint~ of:-6
 fair:4
 fair~ ::-5
 falls:-3
 false:-5
 false~ trace:-5
 fami:-1
 famili:-6
 fan:-6
 fancy:5
 far:-4
 farm~ shop:4
 far~ as:-3
 fast:-7
 faster:2
 faster~ than:-6
 fat:4
 father:-1
 father~ in:4
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-1
 fats~ are:-2
 fats~ at:-5
 fats~ in:-7
 fats~ is:-8
 fats~ melt:-1
 fats~ or:-6
 fats~ were:-6
 fat~ ?:-6
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-2
 fat~ left:4
 fat~ of:-9
 fat~ so:-1
 fat~ was:-6
 fault:3
 favour:1
 february:-8
 feed:2
 feed~ store:3
 feel:2
 feels:-6
 feels~ a:-5
 feels~ like:-4
 feel~ the:-1
 feet:2
 fell:-3
 fell~ in:1
 fell~ on:1
 felt:-1
 felt~ like:-2
 fence:-6
 fete:3
 few:6
 field:-8
 fifth:2
 fifth~ of:8
 fig:-5
 fight:3
 figur:-1
 figure:8
 file:3
 files:-4
 fill:3
 fills:-7
 fills~ my:-7
 fills~ the:-1
 fills~0:-4
 fill~ in:-5
 fill~ the:3
 fill~ to:2
 fill~ up:6
 fill~0:3
 film:-7
 film~ on:-5
 filter:-3
 find:8
 finds:-6
 find~ the:2
 find~F:2
 fine:-6
 finer:-4
 fine~ ?:-5
 fine~ and:-2
 fine~ but:-4
 fine~ for:-6
 fine~ or:-5
 finger:1
 finish:1
 finish~ paste:-6
 finish~ the:-4
 finish~ with:5
 fire:-8
 firm:6
 firmer:-1
 first:-5
 first~ ::-1
 first~ and:-4
 first~ attempt:-9
 first~ batch:1
 first~ ever:-5
 first~ go:-2
 first~ hour:-3
 first~ i:1
 first~ it:-3
 first~ lot:3
 first~ one:-1
 first~ so:6
 first~ soap:-1
 first~ the:-2
 first~ then:-10
 first~ time:3
 first~ to:-3
 first~ try:-4
 first~ went:-2
 first~0:3
 first~t:2
 fish:-2
 fit:-5
 fits:-7
 fits~ the:-5
 fit~ ?:1
 fit~ the:3
 fixed:-9
 fizz:-2
 flak:4
 flake:7
 flame:-6
 flat:1
 flatmate:-2
 flat~ and:-5
 flat~ boil:2
 flat~ for:1
 flat~ in:-5
 float:-3
 float~ an:-6
 floor:3
 floor~ and:-3
 fluid:3
 fluid~ ounc:9
 foam:-5
 foams:-7
 foam~ from:-6
 foam~ over:6
 foil:1
 fold:-2
 folder:-7
 fold~ in:1
 folk:-8
 folks:-7
 follow:-2
 for:-1
 forever:-6
 forever~ to:-5
 forgett:-1
 forget~ the:-1
 forgiv:-9
 forgive:-4
 forgot:4
 forgotten:5
 forgot~ it:2
 forgot~ to:4
 form:-7
 formula:-5
 forum:-9
 for~ a:-4
 for~ about:1
 for~ after:2
 for~ all:-3
 for~ an:-4
 for~ babi:-6
 for~ baby:4
 for~ both:3
 for~ candl:-7
 for~ christma:-3
 for~ days:-3
 for~ each:3
 for~ floor:-3
 for~ free:4
 for~ fry:-1
 for~ gram:5
 for~ half:4
 for~ hands:2
 for~ her:1
 for~ his:-5
 for~ it:-5
 for~ laundry:3
 for~ looks:-4
 for~ luck:5
 for~ me:2
 for~ my:1
 for~ next:-4
 for~ no:5
 for~ noth:-6
 for~ once:7
 for~ one:4
 for~ our:-2
 for~ people:-3
 for~ read:-2
 for~ salad:-10
 for~ saturday:3
 for~ shav:-5
 for~ skin:-8
 for~ soap:-9
 for~ some:-6
 for~ that:-1
 for~ the:3
 for~ these:-3
 for~ this:-2
 for~ those:-4
 for~ today:2
 for~ us:2
 for~ wash:-1
 for~ what:4
 for~ word:-7
 for~ years:-3
 for~ you:-8
 for~ your:2
 for~%:5
 for~0:-6
 for~=:-5
 for~A:-2
 for~B:-1
 for~F:1
 for~L:-6
 for~N:-6
 for~S:-9
 for~T:-4
 for~W:-2
 for~X:2
 for~b:-1
 for~d:-8
 for~e:-7
 for~t:-7
 for~v:-3
 found:7
 found~ a:2
 found~ it:6
 found~ on:1
 found~ out:3
 found~ the:8
 found~ this:-6
 fractionat:12
 fram:-8
 freeze:-4
 freezer:1
 freezer~ for:-7
 freezer~ in:-4
 freezer~ paper:-4
 freeze~ the:-8
 fresh:-3
 friday:3
 friday~ and:-4
 fridge:-2
 fridge~ for:-5
 fridge~ overnight:-6
 friend':-3
 friend:-7
 friend~ says:-8
 friend~ who:5
 friend~ with:-1
 frighten:-5
 from~ ::-8
 from~ a:2
 from~ an:-3
 from~ another:-1
 from~ before:-1
 from~ christma:1
 from~ graz:-3
 from~ it:-2
 from~ krakow:-2
 from~ last:-8
 from~ me:-5
 from~ my:-4
 from~ our:1
 from~ portugal:1
 from~ sunday:9
 from~ that:1
 from~ the:1
 from~ this:-1
 from~ what:-7
 from~ work:2
 from~0:-3
 from~=:-1
 from~F:-5
 from~L:-8
 from~t:-9
 from~w:-9
 front:-1
 front~ of:-6
 froze:3
 frozen:-1
 frozen~ cubes:-3
 frozen~ in:2
 frozen~ to:-6
 frozen~w:-10
 froze~ it:2
 fruit:-5
 fry:3
 fryer:4
 full:6
 full~ of:-4
 fume:-7
 fumes:-10
 fun:-10
 funnel:2
 funny:-4
 further:5
 fwd:-2
 fwd~ ::-2
 f~0:-6
 g:-4
 garage:-3
 garden:-5
 gas:-5
 gate:-8
 gave:2
 gave~ it:1
 gave~ me:6
 gave~ out:6
 gave~ the:-2
 gave~ up:5
 gave~ us:2
 gave~0:-8
 gel:-2
 gell:-3
 gel~ ::-4
 gel~ phase:-6
 generou:4
 gent:-8
 gentle:-1
 gentler:5
 german:-4
 get:-3
 gets:-6
 gets~ a:2
 gets~ the:-4
 gets~0:-3
 gett:-7
 get~ a:3
 get~ it:3
 get~ the:2
 get~ to:-9
 get~0:-8
 get~F:4
 ghana:-6
 gift:-8
 gifts:-5
 girl:-3
 giv:-7
 give:-3
 given:-3
 gives:-9
 gives~ me:-3
 gives~ the:-5
 gives~%:5
 gives~0:-8
 give~ it:-8
 give~ me:1
 give~ or:3
 give~ the:-6
 give~ to:-3
 glad:-3
 glass:-1
 glass~ and:6
 glass~ of:4
 glossy:-3
 glov:-10
 glov~ and:-5
 glov~ on:-6
 glug:6
 glug~ of:4
 go:-2
 goat:3
 goats:-2
 goats~ are:3
 goes:-6
 goes~ away:-3
 goes~ grainy:-3
 goes~ in:-2
 goes~ into:-5
 goes~ off:-6
 goes~ on:-8
 goes~ up:-7
 goggl:-9
 goggl~ and:-4
 goggl~ on:-3
 going:4
 going~ by:-4
 going~ in:6
 going~ to:-1
 gone:4
 gone~ after:-6
 gone~ by:-10
 gone~ to:1
 gone~ up:-3
 gonna:4
 good:-1
 good~ ?:-3
 good~ bit:10
 good~ day:-4
 good~ enough:-1
 good~ even:-3
 good~ for:-7
 good~ glug:5
 good~ morn:-5
 good~ one:-6
 good~ or:-2
 good~ pot:-1
 good~ to:-2
 good~F:-10
 good~t:-6
 goose:1
 got:5
 got~ a:-5
 got~ in:-1
 got~ into:6
 got~ it:-1
 got~ my:-7
 got~ round:6
 got~ swapp:1
 got~ the:-3
 got~ to:4
 got~ too:3
 got~ wet:2
 got~0:-6
 got~=:-4
 got~S:-4
 got~b:4
 go~ ?:-3
 go~ at:5
 go~ by:-3
 go~ clear:3
 go~ for:2
 go~ into:-9
 go~ on:-6
 go~ out:4
 go~ over:-6
 go~ rancid:-6
 go~ to:-3
 go~ up:3
 go~ with:10
 go~ wrong:-3
 grabb:7
 grade:3
 grain:-8
 grainy:-5
 gram:-2
 gramm:-9
 grams~ ::-8
 grams~ and:-2
 grams~ cost:-3
 grams~ for:-1
 grams~ i:4
 grams~ so:-10
 grams~A:-4
 gram~ for:5
 grand:-5
 grandad:6
 granddad:1
 granddaughter:-4
 grandfather:-1
 grandma:-1
 grandmother:-8
 grandmother~ had:-2
 grandpa:2
 grandson:4
 granny:-2
 grans:-8
 grat:1
 grate:-4
 grateful:-3
 grate~ the:-7
 gravy:-1
 graz:-6
 greas:-2
 grease:-2
 greasy:-1
 great:-1
 great~ aunt:-3
 green:-3
 green~ and:4
 green~ one:-2
 greeting:-5
 greeting~ from:-4
 grey:-1
 grind:-3
 grind~ the:-2
 grocer:-4
 ground:-9
 group:1
 group~ ::-4
 group~ of:-5
 grown:3
 guess:10
 guess~ the:-2
 guest:-9
 guild:-9
 g~ ::-7
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:3
 had:3
 hadnt:8
 had~ a:-7
 had~ already:7
 had~ been:3
 had~ come:5
 had~ cool:-6
 had~ dropp:-4
 had~ gone:8
 had~ in:-3
 had~ it:3
 had~ melt:2
 had~ no:-5
 had~ only:-2
 had~ set:1
 had~ some:-3
 had~ that:-1
 had~ the:-1
 had~ to:-6
 had~0:-6
 had~<:-6
 had~=:-1
 had~>:-8
 had~F:4
 had~N:-5
 had~X:3
 had~b:7
 hair:-1
 half:5
 halfway:-6
 halfway~ through:4
 half~ a:4
 half~ and:-5
 half~ as:3
 half~ batch:7
 half~ is:4
 half~ of:2
 half~ size:2
 half~ the:-1
 half~A:-7
 half~F:-2
 half~I:-4
 half~W:-7
 hall:-7
 hallo:-2
 hallo~ my:-2
 halv:8
 halve:-1
 halv~ it:4
 hammer:3
 hand:-3
 handful:1
 handful~ of:-6
 handle:-4
 handout~0:-5
 hands:-2
 hands~ ?:-3
 hands~ are:3
 handwrit:3
 handy:-8
 hand~ ::1
 hand~ and:-1
 hand~ in:-5
 hand~ on:3
 hand~ out:-7
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-3
 hang:5
 hangs:-6
 happen:2
 happy:-3
 happy~ with:-6
 hard:-5
 harden:-6
 harder:-3
 harder~ bar:-2
 hardnes:-5
 hardware:-5
 hardware~ store:-5
 hard~ after:-1
 hard~ and:-4
 hard~ any:-9
 hard~ as:-6
 hard~ smell:-6
 hard~ to:5
 hard~W:-9
 harm:-6
 harsh:-8
 has:1
 hasnt:-8
 has~ anyone:-6
 has~ become:-4
 has~ cool:-6
 has~ done:-5
 has~ gone:-1
 has~ it:2
 has~ made:-3
 has~ moved:-8
 has~ no:-3
 has~ the:-1
 has~ to:-2
 has~=:-5
 has~F:6
 hate:-4
 hav:-3
 have:-1
 havent:4
 have~ a:-10
 have~ asked:4
 have~ been:-2
 have~ done:-2
 have~ enough:-5
 have~ gone:4
 have~ had:3
 have~ i:-7
 have~ it:1
 have~ made:-5
 have~ never:3
 have~ no:-4
 have~ not:-9
 have~ the:4
 have~ to:-9
 have~ used:-4
 have~0:-5
 have~=:-6
 have~>:-5
 have~F:2
 hdpe:-6
 he:-2
 head:-3
 heap:10
 heap~ spoon:1
 hear:-2
 heard:3
 heart:-3
 heat:-13
 heats:-6
 heats~ up:-5
 heat~ and:-3
 heat~ i:-3
 heat~ off:-3
 heat~ the:-5
 heaven:-7
 heavy:4
 heavy~ ?:-5
 heavy~ or:-6
 hed:3
 height:-5
 held:9
 held~ back:1
 held~ the:1
 hell:-4
 hello:-4
 hello~ from:-1
 help:5
 helps:-2
 help~ with:1
 hence:-4
 hence~ the:-9
 hens:-8
 her:-5
 here:-1
 heres:-7
 heres~ my:-1
 heres~ the:-5
 heres~ what:-7
 here~ ::-2
 here~ and:-5
 here~ goes:-2
 here~ i:3
 here~ in:-6
 here~ it:-7
 here~ so:-4
 here~ we:-8
 hers:-11
 herself:-6
 hers~ and:-5
 hers~ with:-8
 her~ hands:-5
 her~ life:-7
 her~ own:-2
 her~ soap:-4
 her~A:-3
 her~F:-9
 hes:-1
 hey:-5
 he~ also:-8
 he~ has:-3
 he~ is:-8
 he~ says:5
 he~ was:-8
 hid:-10
 high:-5
 him:-6
 himself:4
 his:-6
 hiss:2
 his~A:-8
 hit:1
 hit~ it:-7
 hive:-6
 hives:-4
 hiya:1
 hi~ all:2
 hi~ everyone:-4
 hmm:5
 hob:-1
 hola:-2
 hold:-2
 holds:-5
 holds~ a:3
 holds~0:-3
 holds~v:-8
 holds~w:-8
 hold~ ?:-2
 hold~ back:4
 hold~ the:2
 hold~ up:-2
 hole:-4
 holiday:-8
 home~ and:4
 honest:6
 hood:-7
 hope:1
 hope~ it:-4
 hope~ the:-4
 hot:-8
 hotter:-8
 hotter~ than:-4
 hot~ or:-5
 hour:-3
 hour~ and:-6
 hour~ then:-3
 hour~0:2
 house:4
 house~ smell:-8
 how:2
 how~ do:1
 how~ does:-4
 how~ i:3
 how~ it:-1
 how~ long:-7
 how~ many:-6
 how~ much:8
 how~ my:-6
 how~ the:-10
 how~ to:-10
 how~ we:-6
 hp:-4
 hp~ in:-3
 hubby:-3
 huge:4
 humidity:-1
 humidity~%:-4
 hurry:-4
 hurt:-1
 hurts:-4
 husband:2
 husband~ says:-5
 husband~ think:-10
 husband~ who:-7
 hydrogenat:1
 i'd:1
 i'd~ already:3
 i'd~ be:-7
 i'd~ guess:8
 i'd~ have:-6
 i'd~ like:7
 i'd~ love:-5
 i'd~ never:-7
 i'd~ pour:-2
 i'd~ put:3
 i'd~ rather:-1
 i'd~ read:4
 i'd~ say:6
 i'd~ use:-6
 i'd~ weigh:2
 i:3
 idea:-2
 idea~ which:4
 idk:6
 ie:4
 ie~=:-7
 if:-3
 if~ anyone:-3
 if~ i:1
 if~ im:3
 if~ it:4
 if~ its:-1
 if~ somebody:-7
 if~ that:3
 if~ the:-6
 if~ ther:-4
 if~ this:3
 if~ ur:-9
 if~ you:-5
 if~ your:-6
 if~ youre:-7
 if~ yours:-4
 if~ youve:-7
 if~A:-5
 if~F:-7
 if~b:-5
 ignore:7
 ignore~ the:9
 ill~ do:-5
 ilse:-1
 im:2
 impatient:-7
 im~ a:-3
 im~ after:8
 im~ at:-9
 im~ doing:-4
 im~ going:1
 im~ in:-7
 im~ mak:3
 im~ not:1
 im~ on:3
 im~ told:-4
 im~ using:6
 im~0:-4
 in:1
 inch:1
 incl:1
 includ:4
 includ~ the:7
 individual:-7
 individual~ mould:-7
 infus:4
 infus~ with:4
 ingredient:-3
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-4
 inside:-4
 insist:8
 instant:-3
 instead:4
 insulate:-6
 internet:-3
 into:-1
 into~ a:-6
 into~ cubes:-5
 into~ mould:-3
 into~ oils:-3
 into~ one:-9
 into~ that:3
 into~ the:2
 into~ this:6
 into~0:-5
 into~=:-4
 into~W:-7
 into~b:2
 into~v:-3
 in~ ::2
 in~ ?:5
 in~ a:-2
 in~ about:-2
 in~ after:5
 in~ all:-8
 in~ an:-7
 in~ and:-3
 in~ another:6
 in~ april:-7
 in~ as:4
 in~ at:3
 in~ august:2
 in~ batch:-5
 in~ before:8
 in~ between:-6
 in~ blend:-10
 in~ burst:-2
 in~ by:2
 in~ case:-7
 in~ class:1
 in~ cold:-6
 in~ cubes:-7
 in~ dag:-2
 in~ each:-4
 in~ every:-2
 in~ fact:4
 in~ first:-5
 in~ for:11
 in~ front:-8
 in~ g:1
 in~ grams:-11
 in~ half:1
 in~ her:-10
 in~ here:-1
 in~ hers:-9
 in~ his:-8
 in~ hot:-6
 in~ i:5
 in~ it:1
 in~ its:7
 in~ january:-7
 in~ july:-6
 in~ june:-6
 in~ last:-1
 in~ law:-2
 in~ laws:-3
 in~ march:-10
 in~ may:4
 in~ maybe:4
 in~ mould:-4
 in~ my:-1
 in~ no:-7
 in~ ohio:-4
 in~ on:-5
 in~ once:10
 in~ one:5
 in~ or:2
 in~ order:-6
 in~ our:2
 in~ plus:-2
 in~ red:1
 in~ short:-5
 in~ slow:-2
 in~ small:-5
 in~ so:5
 in~ spr:-7
 in~ step:-5
 in~ steps:5
 in~ summer:-6
 in~ that:4
 in~ the:-2
 in~ there:7
 in~ this:1
 in~ time:1
 in~ tiny:4
 in~ to:-3
 in~ too:2
 in~ total:-6
 in~ truth:1
 in~ under:-3
 in~ week:-3
 in~ went:5
 in~ when:-4
 in~ which:1
 in~ winter:-4
 in~ with:6
 in~ your:-1
 in~0:-6
 in~<:2
 in~=:-5
 in~>:-2
 in~F:-3
 in~I:-6
 in~L:2
 in~N:6
 in~W:-5
 in~b:-8
 in~e:3
 in~l:-2
 in~r:-6
 in~t:-6
 in~v:-11
 ish:-6
 isnt:6
 isnt~ in:3
 isnt~ it:5
 issue:-1
 is~ a:2
 is~ about:-6
 is~ actual:4
 is~ all:-2
 is~ already:1
 is~ alway:-1
 is~ an:3
 is~ and:-7
 is~ as:-1
 is~ at:-5
 is~ below:-4
 is~ better:1
 is~ cheap:-4
 is~ clear:-2
 is~ correct:-8
 is~ dear:-1
 is~ done:1
 is~ dry:6
 is~ enough:-4
 is~ exact:-7
 is~ fine:-11
 is~ finish:2
 is~ for:-3
 is~ going:4
 is~ gone:-7
 is~ good:-7
 is~ grams:2
 is~ hard:-1
 is~ her:-3
 is~ hot:-4
 is~ how:-1
 is~ in:3
 is~ it:-3
 is~ just:-7
 is~ left:-2
 is~ like:-4
 is~ love:-3
 is~ meant:-2
 is~ mine:-7
 is~ more:-2
 is~ my:-1
 is~ near:-7
 is~ no:-6
 is~ normal:-7
 is~ not:-3
 is~ noth:-3
 is~ now:6
 is~ off:3
 is~ ok:-6
 is~ on:1
 is~ one:2
 is~ only:-9
 is~ our:-5
 is~ out:2
 is~ over:2
 is~ plenty:2
 is~ real:9
 is~ right:2
 is~ safe:-1
 is~ set:-1
 is~ she:-3
 is~ short:1
 is~ small:-4
 is~ so:-1
 is~ sold:5
 is~ step:-2
 is~ still:1
 is~ technical:8
 is~ that:-4
 is~ the:-2
 is~ there:-4
 is~ thick:-4
 is~ this:-8
 is~ too:1
 is~ weigh:-2
 is~ what:4
 is~ where:-7
 is~ whether:-8
 is~ why:-6
 is~ with:11
 is~ worth:-5
 is~%:-1
 is~0:3
 is~<:-5
 is~=:-5
 is~>:-6
 is~A:2
 is~F:5
 is~L:4
 is~N:8
 is~S:1
 is~T:-6
 is~b:2
 is~d:-1
 is~e:-6
 is~t:-8
 is~v:-2
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 itll:-2
 itll~ be:1
 its:1
 itself:-4
 itself~ off:-1
 its~ a:2
 its~ about:-6
 its~ all:-3
 its~ as:-7
 its~ been:-6
 its~ clear:-6
 its~ cook:5
 its~ date:-4
 its~ fine:-7
 its~ for:5
 its~ gone:4
 its~ hot:-4
 its~ in:-4
 its~ just:-7
 its~ made:3
 its~ my:1
 its~ not:-4
 its~ on:-8
 its~ only:-4
 its~ own:-4
 its~ place:5
 its~ ready:-5
 its~ sitt:-5
 its~ the:-2
 its~ time:-5
 its~ too:1
 its~ weight:-5
 its~ what:5
 its~0:7
 its~=:-6
 its~A:5
 its~N:5
 its~b:-4
 its~d:-6
 its~l:3
 it~ ::-7
 it~ ?:-3
 it~ a:1
 it~ about:-4
 it~ add:-4
 it~ after:-2
 it~ again:3
 it~ alone:-7
 it~ already:3
 it~ and:-2
 it~ another:4
 it~ anyway:-10
 it~ as:-2
 it~ away:-5
 it~ back:1
 it~ bad:7
 it~ be:2
 it~ because:3
 it~ before:-4
 it~ behav:-4
 it~ bit:6
 it~ but:-7
 it~ can:-6
 it~ check:-8
 it~ clear:-4
 it~ climb:-3
 it~ come:-4
 it~ comes:3
 it~ cooks:-3
 it~ cool:2
 it~ cools:-7
 it~ correct:-5
 it~ cost:-4
 it~ crack:-5
 it~ cut:-4
 it~ did:-5
 it~ didnt:-2
 it~ do:-4
 it~ does:1
 it~ doesnt:1
 it~ down:2
 it~ dried:3
 it~ drop:-3
 it~ enough:-4
 it~ every:-5
 it~ first:2
 it~ fits:-6
 it~ flat:-5
 it~ foam:3
 it~ for:-1
 it~ from:1
 it~ gets:-4
 it~ gives:1
 it~ go:-5
 it~ goes:2
 it~ good:-6
 it~ got:2
 it~ hard:-5
 it~ heats:-5
 it~ here:-3
 it~ holds:-4
 it~ i:-1
 it~ if:-5
 it~ in:-2
 it~ into:-9
 it~ is:3
 it~ isnt:3
 it~ it:2
 it~ its:-6
 it~ last:-1
 it~ lasts:-5
 it~ lather:-8
 it~ like:-5
 it~ look:7
 it~ looks:-4
 it~ makes:2
 it~ matter:3
 it~ may:-5
 it~ melts:-3
 it~ needs:-2
 it~ never:-2
 it~ next:-3
 it~ no:4
 it~ now:-8
 it~ off:6
 it~ ok:-4
 it~ on:1
 it~ once:-8
 it~ or:-6
 it~ out:-1
 it~ outside:-5
 it~ past:-9
 it~ plus:-5
 it~ real:4
 it~ right:-1
 it~ safe:1
 it~ said:7
 it~ says:2
 it~ seiz:3
 it~ set:3
 it~ sets:-5
 it~ should:-2
 it~ since:-4
 it~ sit:1
 it~ smell:-2
 it~ so:1
 it~ stand:-2
 it~ stay:5
 it~ still:-6
 it~ stink:-6
 it~ sweat:-5
 it~ takes:-6
 it~ the:-5
 it~ then:-3
 it~ there:-9
 it~ thicken:4
 it~ this:-1
 it~ through:-7
 it~ times:-1
 it~ to:3
 it~ took:-4
 it~ trac:-2
 it~ turn:-5
 it~ twice:2
 it~ under:-5
 it~ until:-4
 it~ wants:-3
 it~ was:2
 it~ went:2
 it~ when:4
 it~ will:-7
 it~ with:-4
 it~ without:3
 it~ wont:-6
 it~ would:-3
 it~ wouldnt:4
 it~ wrong:-6
 it~ zapp:2
 it~ zaps:-5
 it~%:2
 it~0:2
 it~=:-5
 it~A:-3
 it~F:-3
 it~S:-3
 it~b:5
 it~t:-8
 ive:-2
 ive~ been:-6
 ive~ bought:4
 ive~ come:-4
 ive~ done:-6
 ive~ gone:8
 ive~ got:-2
 ive~ had:-7
 ive~ just:1
 ive~ made:-4
 ive~ never:-6
 ive~ no:-2
 ive~ not:-5
 ive~ only:2
 ive~ put:-1
 ive~ read:-6
 ive~ seen:-7
 ive~ since:5
 ive~ tried:-7
 ive~ weigh:-3
 ivory:-6
 i~ ?:-9
 i~ actual:3
 i~ add:-4
 i~ added:4
 i~ alway:-4
 i~ am:5
 i~ asked:-6
 i~ began:-7
 i~ believe:4
 i~ blame:-6
 i~ boil:1
 i~ bought:-5
 i~ bring:-5
 i~ buy:-5
 i~ call:-1
 i~ came:1
 i~ can:-9
 i~ cant:-4
 i~ carri:10
 i~ caught:2
 i~ chang:-3
 i~ check:-8
 i~ chuck:7
 i~ cook:-1
 i~ copi:3
 i~ copy:-6
 i~ could:1
 i~ couldnt:1
 i~ count:-2
 i~ did:2
 i~ didnt:1
 i~ dilut:-7
 i~ dilute:-4
 i~ dissolve:4
 i~ do:-7
 i~ dont:3
 i~ doubl:6
 i~ drain:9
 i~ dropp:1
 i~ empti:9
 i~ ended:-3
 i~ ever:-7
 i~ fill:8
 i~ final:-8
 i~ find:-1
 i~ first:-5
 i~ fish:9
 i~ fold:-4
 i~ follow:1
 i~ forgot:-2
 i~ found:-2
 i~ freeze:2
 i~ froze:-3
 i~ gave:-4
 i~ get:-4
 i~ give:-4
 i~ go:2
 i~ guess:12
 i~ had:-3
 i~ hadnt:6
 i~ halv:6
 i~ hand:-4
 i~ hate:-3
 i~ have:1
 i~ havent:1
 i~ held:3
 i~ honest:9
 i~ hope:-3
 i~ just:2
 i~ keep:-2
 i~ kept:3
 i~ knock:4
 i~ know:-5
 i~ learn:-6
 i~ leave:2
 i~ left:9
 i~ let:3
 i~ like:-3
 i~ lost:6
 i~ made:-1
 i~ make:-9
 i~ may:3
 i~ mean:-1
 i~ meant:-8
 i~ measur:-3
 i~ melt:1
 i~ mess:-6
 i~ mix:-6
 i~ mixed:3
 i~ must:4
 i~ near:-6
 i~ never:2
 i~ notic:9
 i~ ok:1
 i~ once:-10
 i~ open:-1
 i~ own:1
 i~ paid:-5
 i~ panick:-2
 i~ plan:-2
 i~ plann:-3
 i~ press:-5
 i~ print:-6
 i~ promis:2
 i~ put:3
 i~ ran:-2
 i~ read:4
 i~ real:-2
 i~ realis:3
 i~ remember:-1
 i~ render:-2
 i~ replac:3
 i~ rins:6
 i~ round:5
 i~ run:-9
 i~ said:-8
 i~ saw:5
 i~ scrap:10
 i~ see:6
 i~ sell:-4
 i~ set:-1
 i~ shall:1
 i~ shook:6
 i~ should:1
 i~ siev:-2
 i~ skipp:4
 i~ smell:1
 i~ soap:-3
 i~ split:-1
 i~ sprinkl:-5
 i~ stir:-7
 i~ stirr:3
 i~ stopp:9
 i~ swapp:10
 i~ swear:1
 i~ take:-5
 i~ teach:-5
 i~ tell:-7
 i~ test:-3
 i~ think:1
 i~ thought:-3
 i~ threw:2
 i~ told:-3
 i~ took:3
 i~ topp:-1
 i~ translate:-4
 i~ tried:-1
 i~ trust:-2
 i~ turn:-3
 i~ type:3
 i~ typed:8
 i~ use:-4
 i~ usual:2
 i~ wait:-3
 i~ want:3
 i~ warm:-6
 i~ was:-6
 i~ wash:-2
 i~ wasnt:2
 i~ weigh:4
 i~ went:6
 i~ will:-6
 i~ wiped:-8
 i~ work:-6
 i~ would:3
 i~ write:-10
 i~ wrote:5
 i~K:-8
 jam~ jar:2
 january:-9
 january~ and:-6
 jar:3
 jars:-8
 jars~ of:-4
 jar~ and:8
 jar~ of:8
 jar~ so:-3
 jelly:-5
 job:4
 join:1
 join~ the:3
 judge:2
 jug's:5
 jug:3
 jugs:2
 jug~ ::3
 jug~ and:3
 jug~ from:3
 jug~ in:-8
 jug~ is:-9
 jug~ of:5
 jug~ on:-6
 jug~ so:6
 jug~ to:7
 jug~ was:-4
 jug~ with:1
 july:-4
 jump:6
 jumps:3
 june:-10
 just~ a:-3
 just~ as:-2
 just~ for:-7
 just~ the:3
 just~ want:-11
 just~ what:-7
 just~F:-4
 k:2
 keep:-8
 keeps:-7
 keeps~ it:-5
 keeps~ the:-3
 keep~ a:-5
 keep~ back:-2
 keep~ in:-7
 keep~ it:-7
 keep~ my:-7
 keep~ the:2
 keep~0:-4
 keep~<:1
 keep~t:-3
 kept:2
 kept~ back:1
 kept~ in:-4
 kept~ the:-1
 kept~0:2
 kettle:7
 key:-3
 kg:3
 kg~ cost:-3
 kid:9
 kidd:-8
 kids:-2
 kill:-7
 kilo:5
 kilo~ in:-3
 kilo~ of:-4
 kinda:2
 kind~ check:-8
 kind~ of:-3
 kind~ regard:-4
 kind~ with:5
 kiss:-5
 kitchen~ and:-2
 kitchen~ bar:-7
 kitchen~ is:-3
 kitchen~ scale:6
 kitchen~ so:-4
 kitchen~ was:-7
 knew:-6
 knife:-9
 knob:8
 knob~ of:8
 knock:4
 knock~ a:-2
 knock~ the:5
 know:3
 knows:4
 knows~ how:5
 know~ ::-5
 know~ how:1
 know~ i:-5
 know~ if:3
 know~ is:-8
 know~ it:2
 know~ its:-3
 know~ that:3
 know~ the:-2
 know~ what:-8
 know~ whether:-5
 know~ which:3
 krakow:-2
 k~0:-11
 l:-6
 la:-5
 lab:-5
 label:1
 labell:-3
 label~ ::-6
 label~ on:-7
 label~ says:4
 label~0:-8
 ladi:-3
 ladl:10
 ladle:6
 ladle~ of:4
 lads:-4
 lady:-2
 lady~ at:-4
 lady~ in:-6
 lady~ on:-4
 land:1
 last:-6
 lasts:-8
 last~ autumn:-4
 last~ batch:-7
 last~ bit:3
 last~ minute:5
 last~ month:4
 last~ night:-7
 last~ of:-6
 last~ one:-9
 last~ time:-5
 last~ week:2
 last~ weeks:4
 last~ winter:-6
 last~ year:-4
 last~ years:-2
 last~0:4
 last~F:-6
 late:-1
 later:-2
 later~ on:-6
 lather:-5
 lather~ is:-3
 lather~ like:-8
 lather~ was:-4
 laugh:2
 laugh~ at:-2
 laundry:2
 laundry~ bar:-8
 laundry~ bars:-3
 laundry~ soap:-4
 law:-3
 laws:-3
 law~ who:-4
 layer:1
 lb:1
 lb~ oz:-7
 leak:-3
 learn:-8
 learn~ from:-2
 learn~ that:2
 least:-3
 least~t:-1
 leav:-5
 leave:-4
 leave~ it:-3
 leave~ out:-8
 leave~ the:-2
 leave~t:-1
 leav~ a:-5
 leav~ the:-5
 leeds:4
 left:1
 leftover:1
 leftover~F:-1
 left~ and:5
 left~ for:-10
 left~ from:5
 left~ in:1
 left~ it:2
 left~ of:-5
 left~ on:2
 left~ out:-2
 left~ over:-5
 left~ so:-1
 left~ the:1
 left~ to:3
 length:-4
 lent:-1
 less:5
 lesson:-6
 less~ of:5
 less~ than:-1
 less~F:-1
 less~W:-3
 let:-1
 lets:1
 letter:4
 let~ cool:-2
 let~ it:-2
 let~ me:-3
 let~ the:-4
 let~ them:3
 let~ us:-6
 let~ your:-6
 library:-6
 library~ book:-6
 lick:1
 lid:-2
 lidd:-2
 lids:-6
 lid~ and:-8
 lid~ of:-8
 lid~ off:3
 lid~ on:-7
 lie:-6
 life:1
 lift:5
 lift~ the:3
 light:2
 lighter:-7
 light~ on:2
 like:-3
 liked:-8
 likes:-4
 likes~ it:3
 likewise:2
 like~ a:-3
 like~ alway:-9
 like~ an:-7
 like~ candle:-5
 like~ cheese:-7
 like~ cold:-4
 like~ custard:-5
 like~ i:-7
 like~ it:2
 like~ mad:2
 like~ mash:-4
 like~ me:-5
 like~ my:4
 like~ noth:-2
 like~ paper:3
 like~ porridge:4
 like~ sandpaper:-4
 like~ someone:-2
 like~ soup:-5
 like~ stone:-5
 like~ that:-7
 like~ the:-6
 like~ thin:-4
 like~ this:1
 like~ to:-5
 like~ wet:-2
 like~ you:-3
 like~%:1
 like~0:3
 like~F:-6
 like~L:-6
 like~S:-4
 like~U:-6
 like~X:-3
 like~t:7
 like~w:6
 limit:-4
 line:7
 lined:-7
 lined~ w:-5
 lined~ with:-2
 linen:-2
 lines:-1
 line~ ::5
 line~ the:-5
 lino:1
 lip:-5
 lip~ balm:-5
 liquid:2
 liquid~ ::1
 liquid~ and:-3
 liquid~ soap:-1
 liquor:7
 list:2
 list~ for:-7
 list~ i:4
 list~ is:-2
 litre:4
 little:1
 little~ ?:-6
 little~A:2
 little~F:-8
 little~W:4
 live:-5
 lived:-8
 lives:-7
 lives~ in:-7
 loaf:-3
 loaf~ ::-5
 loaf~ mold:-3
 loaf~ mould:-3
 loaf~ tin:-2
 loav:-4
 local:-5
 lock:-9
 loft:-3
 log:1
 lol:-3
 long:-2
 longer:1
 longer~ than:-5
 long~ as:-5
 long~ one:1
 long~ sleev:-4
 long~ story:5
 long~ time:-4
 look:3
 looks:-10
 looks~ like:-4
 looks~ ok:-1
 look~ a:3
 look~ at:-6
 look~ for:2
 look~ it:-6
 look~ like:1
 look~ of:1
 look~ ok:-3
 look~ over:-6
 look~ right:-4
 loosen:10
 loosen~ it:7
 lose:-2
 lost:2
 lost~ the:-6
 lot:-2
 lotion:8
 lots:-9
 lots~ of:-6
 lot~ ?:-1
 lot~ of:3
 lot~ to:-2
 lot~0:3
 loud:-8
 love:-6
 loves:3
 love~ a:2
 love~ and:-2
 love~ but:-6
 love~ it:-4
 love~ to:-4
 low:-2
 lower:7
 lowest:-5
 lowest~ flame:-5
 low~ and:-3
 low~ for:4
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:3
 lucki:-8
 lucky:-6
 lukewarm:-6
 lump:5
 lumps:-3
 lumpy:5
 lump~ of:-1
 lunch:-7
 lurker:-4
 luxury:-3
 lye's:5
 lye:2
 lyes:-7
 lyes~ together:-5
 lying:4
 lyon:-5
 l~0:-4
 m:-6
 machine:-6
 made:2
 made~ ::-6
 made~ a:2
 made~ for:-8
 made~ from:-3
 made~ hers:-6
 made~ in:-6
 made~ it:2
 made~ my:-3
 made~ of:-4
 made~ on:-5
 made~ soap:-4
 made~ the:5
 made~ this:-5
 made~ up:5
 made~ with:-7
 made~0:8
 made~t:-1
 magazine:-5
 mak:9
 make:1
 maker:-6
 makes:-5
 makes~ a:-8
 makes~ it:-3
 makes~ no:-5
 makes~ sense:-3
 makes~ the:-6
 makes~ up:7
 makes~0:-7
 makes~T:-9
 makes~b:-5
 make~ a:-10
 make~ exact:-4
 make~ it:7
 make~ sense:-2
 make~ soap:-5
 make~ the:-7
 make~ this:-5
 mak~ it:7
 mak~ the:-3
 mak~ this:-1
 mama:-6
 man:-7
 many:-1
 march:-10
 margin:-2
 marit:-4
 mark:5
 market:-6
 marta:3
 mash:-4
 mash~ potato:-3
 mass:-5
 match:-1
 mate:-4
 material:-6
 maths:3
 matter:4
 matter~ to:5
 may:2
 maybe:9
 maybe~ a:7
 maybe~0:4
 maybe~<:-2
 maybe~t:-7
 maybe~w:3
 may~ be:2
 may~ have:6
 may~ i:3
 me:-1
 mean:-2
 means:-1
 meant:-1
 meanwhile:3
 mean~ the:3
 mean~ to:-9
 measur:4
 measure:1
 measur~ cup:4
 measur~ it:1
 measur~ jug:8
 measur~ the:2
 mechanic:3
 medium:-5
 meets:-3
 melt:-2
 melts:-9
 melts~ at:-6
 melt~ and:3
 melt~ at:-4
 melt~ by:-8
 melt~ everyth:5
 melt~ first:-8
 melt~ i:-9
 melt~ in:6
 melt~ it:2
 melt~ on:-8
 melt~ the:-7
 melt~ with:3
 melt~=:-3
 melt~F:-5
 member:2
 memory:5
 men:-8
 merci:-4
 mess:-5
 mess~ up:-3
 met:-1
 method:-4
 method~ ::-5
 metric:-6
 me~ ?:5
 me~ about:-3
 me~ and:1
 me~ as:1
 me~ at:2
 me~ before:-5
 me~ but:-2
 me~ for:-2
 me~ how:-8
 me~ i:-1
 me~ if:-4
 me~ in:-3
 me~ it:-5
 me~ its:-7
 me~ on:-1
 me~ that:-2
 me~ this:-4
 me~ to:-8
 me~ where:3
 me~ whether:-2
 me~ with:2
 me~0:-9
 me~t:-7
 microwave:1
 middle:-6
 middle~ of:3
 might~ have:4
 milder:-1
 milk:-7
 milk~ carton:-7
 mill:-7
 min:7
 mind:6
 mind~ the:-3
 mine:-3
 mine~ from:1
 mine~ had:-3
 mine~ has:-2
 mine~ in:-6
 mine~ is:5
 mine~ took:-6
 mine~ was:2
 mine~ with:5
 minimum:2
 minus:6
 minus~ the:7
 minus~ whatever:7
 minute:-3
 minute~0:-6
 min~ .:5
 misread:11
 miss:3
 miss~ the:4
 mistak:3
 mistake:4
 mistake~ and:-4
 mix:4
 mixed:4
 mixed~ at:-7
 mixed~ in:5
 mixed~ it:3
 mixed~ the:1
 mixed~ up:-1
 mixed~ with:-2
 mixer:-4
 mix~ at:-2
 mix~ the:3
 mix~A:-3
 mk:-4
 ml:10
 mm:-8
 mode:3
 modern:-4
 mold:2
 molds:4
 mold~ holds:-4
 mold~ is:2
 moment:-8
 moms:-2
 mon:4
 monday:-2
 money:3
 month:-3
 month~ i:-2
 month~0:-5
 moon:-4
 mopp:6
 mopp~ up:6
 more:3
 more~ and:-5
 more~ fat:-6
 more~ like:8
 more~ of:3
 more~ or:-5
 more~ than:-3
 more~A:5
 more~F:4
 morn~ all:-1
 most:3
 most~ of:9
 mother:-1
 mother~ and:-6
 mother~ did:3
 mother~ in:1
 mould:-1
 mouldy:4
 mould~ ::-6
 mould~ a:-5
 mould~ and:-4
 mould~ bang:-4
 mould~ for:-3
 mould~ holds:-3
 mould~ in:-5
 mould~ is:2
 mould~ of:-7
 mould~ on:-4
 mould~ so:-7
 mould~ the:-6
 mould~ was:-5
 mould~ with:-8
 mould~t:-4
 mould~v:-4
 mov:2
 move:-4
 moved:5
 moved~ to:1
 moves:-2
 mrs:3
 much~ ?:-5
 much~ and:6
 much~ as:-6
 much~ fat:-4
 much~ for:-10
 much~ of:-4
 much~ superfat:-5
 much~A:-3
 much~F:-3
 much~W:4
 muffin:-6
 mug:5
 multip:6
 mums:-1
 mum~ says:-5
 museum:-6
 mush:-5
 must:-4
 must~ be:-9
 mutton:1
 myself:-3
 my~ arm:-4
 my~ aunt:-4
 my~ aunts:2
 my~ babcia:-4
 my~ bars:-4
 my~ bathroom:7
 my~ book:3
 my~ boyfriend:-1
 my~ brother':4
 my~ brother:-2
 my~ colleague:-4
 my~ country:4
 my~ dad:-7
 my~ dads:2
 my~ daughter':-6
 my~ daughter:3
 my~ earlier:4
 my~ elbow:-6
 my~ english:-1
 my~ everyday:-3
 my~ ex:-5
 my~ father:-2
 my~ first:-2
 my~ flatmate:-4
 my~ friend:3
 my~ glass:-1
 my~ good:-4
 my~ gran:-1
 my~ granddaughter:-4
 my~ grandmother:-9
 my~ grandson:1
 my~ great:-1
 my~ hair:-2
 my~ hand:-1
 my~ hands:-8
 my~ handwrit:-7
 my~ husband:-5
 my~ kilo:-4
 my~ kitchen:2
 my~ last:-10
 my~ laundry:-4
 my~ little:3
 my~ mind:7
 my~ mold:-8
 my~ mother:-1
 my~ mums:-5
 my~ nan:-7
 my~ nans:-3
 my~ neighbour:-3
 my~ nephew:-5
 my~ niece:-1
 my~ notebook:6
 my~ notes:-1
 my~ number:-2
 my~ own:4
 my~ partner:-2
 my~ paste:-7
 my~ phone:-4
 my~ plan:-3
 my~ question:-2
 my~ recipe:-3
 my~ scale:5
 my~ sheet:-2
 my~ sister:-9
 my~ skin:2
 my~ slow:-3
 my~ soap:-2
 my~ spreadsheet:-4
 my~ sums:1
 my~ table:-6
 my~ teacher:-6
 my~ third:-3
 my~ thumb:-1
 my~ tongue:-2
 my~ uncle:1
 my~ usual:-7
 my~ very:-7
 my~ wife:1
 my~ wifes:-3
 my~%:-2
 my~0:-7
 my~A:1
 my~F:-3
 my~K:-7
 my~L:-10
 my~S:-4
 my~W:4
 my~b:3
 my~l:-5
 my~t:3
 my~w:3
 m~A:-8
 m~F:-4
 n:-1
 name:-10
 name~ ::-4
 nan:-10
 nans:-3
 natural:-6
 nb:2
 near:-4
 nearer:6
 nearer~0:5
 near~ enough:3
 near~ it:-3
 near~ the:-3
 near~%:-10
 near~d:-1
 near~t:3
 need:-5
 needs:-5
 needs~ a:-7
 needs~ the:-6
 need~ ::-2
 need~ a:-4
 need~ it:4
 need~ more:-4
 need~ the:-6
 need~ to:1
 negative:2
 neighbor:-6
 neighbour:-5
 neither:3
 neither~ of:1
 nephew:-2
 nerv:-7
 nervou:-2
 net:3
 never:-1
 never~ above:-7
 never~ added:7
 never~ again:-8
 never~ bother:-6
 never~ check:-7
 never~ did:-6
 never~ fail:-2
 never~ fails:-4
 never~ go:-9
 never~ got:8
 never~ had:-1
 never~ happen:7
 never~ in:-6
 never~ let:-5
 never~ made:9
 never~ once:-3
 never~ set:5
 never~ the:-8
 never~ went:-9
 new:-4
 news:-6
 newspaper:-7
 new~ bottle:-4
 new~ here:-3
 new~ one:6
 new~ scale:-4
 new~ to:-4
 next:-8
 next~ day:-1
 next~ door:-5
 next~ month:-7
 next~ morn:1
 next~ one:-8
 next~ time:-9
 next~ to:5
 next~ year:-3
 nice:-2
 nicer:-6
 niece:2
 night:-8
 night~ and:-2
 night~ before:-5
 nil:2
 no:-1
 nobody:-3
 nobody~ answer:-2
 nobody~ had:6
 nobody~ has:2
 nobody~ will:-1
 none:5
 none~ at:-7
 none~ in:-2
 none~ the:-3
 nonna:-9
 noon:-7
 nor:-1
 normal:-5
 normal~ ?:-6
 normal~ one:-4
 north:-3
 nose:-8
 note:7
 notebook:-3
 notebook~ ::-5
 notebook~ p:-3
 notebook~ says:1
 notebook~ the:-3
 notes:-3
 notes~ ::1
 notes~ app:-6
 notes~ from:-5
 noth:-5
 noth~ and:-5
 noth~ at:-6
 noth~ but:-4
 noth~ else:-2
 noth~ in:-4
 noth~ only:-5
 notic:8
 notice:1
 notic~ the:2
 notic~ when:7
 not~ ?:-3
 not~ a:-8
 not~ at:-4
 not~ be:-9
 not~ certain:5
 not~ for:-5
 not~ going:2
 not~ in:3
 not~ like:-5
 not~ more:-6
 not~ on:8
 not~ sure:3
 not~ that:-7
 not~ the:-2
 not~ to:-8
 not~ too:-5
 not~ touch:-4
 not~ use:-4
 not~ what:-1
 not~0:-5
 not~A:-4
 not~F:12
 not~b:6
 not~e:10
 november:-4
 now:4
 nowhere:-6
 now~ ::-5
 now~ ?:3
 now~ and:-3
 now~ i:-2
 now~ it:2
 now~ its:6
 now~ my:4
 now~ on:4
 now~ so:-9
 now~ the:2
 now~F:3
 no~ ?:-2
 no~ ash:-3
 no~ difference:-8
 no~ gel:-6
 no~ good:-3
 no~ harm:-6
 no~ i:-5
 no~ idea:1
 no~ it:5
 no~ longer:7
 no~ more:-1
 no~ need:-6
 no~ one:1
 no~ other:-7
 no~ reason:-5
 no~ smell:-3
 no~ sorry:1
 no~ superfat:-9
 no~ time:-5
 no~ wait:4
 no~ white:-3
 no~ zap:-6
 no~0:2
 no~F:9
 no~I:3
 no~S:-10
 no~W:2
 no~X:-10
 number:-6
 number~ ?:-5
 number~ and:3
 number~ are:1
 number~ hold:-1
 number~ i:-5
 number~ is:-3
 number~0:-10
 nurse:-4
 nuts:1
 n~ it:-2
 n~=:-4
 n~F:4
 o'clock:-3
 o:-5
 oat:-8
 oat~X:-3
 obvious:-4
 obvs:-6
 october:2
 odd:-5
 odds:-6
 of:2
 off:3
 offcut:-5
 offer:-6
 office:-8
 off~ a:1
 off~ and:3
 off~ at:-8
 off~ by:-1
 off~ for:7
 off~ i:-7
 off~ in:3
 off~ it:2
 off~ my:-4
 off~ the:3
 off~ what:8
 off~0:-3
 off~l:2
 often:-7
 of~ about:-5
 of~ all:-7
 of~ ammonia:-5
 of~ an:2
 of~ anyth:-9
 of~ batter:-10
 of~ clean:-5
 of~ cold:2
 of~ course:-2
 of~ doors:-8
 of~ dried:-2
 of~ each:7
 of~ everyth:3
 of~ extra:-1
 of~ eyes:-1
 of~ fat:2
 of~ fats:2
 of~ half:1
 of~ it:1
 of~ last:3
 of~ melt:2
 of~ mine:-4
 of~ my:-3
 of~ noth:-6
 of~ oil:1
 of~ oils:-3
 of~ old:5
 of~ one:3
 of~ our:-3
 of~ paste:-7
 of~ plain:2
 of~ rough:-3
 of~ soap:2
 of~ some:4
 of~ stirr:-7
 of~ sunday:-9
 of~ that:7
 of~ the:3
 of~ them:-1
 of~ these:-6
 of~ warm:-3
 of~ wet:-7
 of~ what:-3
 of~ which:-2
 of~ you:-6
 of~ your:-5
 of~%:3
 of~0:-7
 of~=:1
 of~>:-7
 of~A:2
 of~B:3
 of~C:5
 of~F:-3
 of~I:-4
 of~K:3
 of~L:8
 of~M:-7
 of~N:9
 of~S:-1
 of~U:5
 of~W:2
 of~X:-4
 of~b:-1
 of~t:-1
 of~v:-8
 of~w:-9
 oh:1
 ohio:-4
 oil:4
 oils:-2
 oils~ ?:-1
 oils~ and:-4
 oils~ are:-3
 oils~ at:-5
 oils~ because:-6
 oils~ come:-4
 oils~ g:-5
 oils~ in:-3
 oils~ or:-1
 oils~ to:-1
 oils~ were:3
 oils~>:-2
 oily:5
 oil~ ?:-7
 oil~ and:-3
 oil~ at:6
 oil~ from:1
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-3
 oil~ is:1
 oil~ of:2
 oil~ on:-4
 oil~ to:3
 oil~ was:-2
 oil~ weight:-6
 ok:-1
 okay:-4
 okay~ ?:-5
 okay~ for:-4
 okay~ so:-3
 ok~ ?:-2
 ok~ before:-4
 ok~ for:-6
 ok~ or:-2
 ok~ so:3
 ok~ to:-5
 ok~ with:-6
 old:2
 older:2
 oldest:-9
 old~ and:1
 old~ blanket:-2
 old~ days:-4
 old~ one:-6
 old~ pillowcase:-4
 old~ recipe:2
 old~ sheet:1
 old~ soap:-7
 old~ tub:4
 old~A:3
 old~F:3
 olej:-3
 olej~F:-3
 oma:-6
 omg:-5
 on:-1
 once:-4
 once~ a:3
 once~ and:1
 once~ in:-1
 once~ it:3
 once~ its:-1
 once~ the:-2
 one:-4
 ones:-6
 ones~ are:-8
 one~ ::-3
 one~ ?:-2
 one~ after:-8
 one~ and:5
 one~ at:7
 one~ bar:-7
 one~ batch:-6
 one~ bottle:-2
 one~ can:-5
 one~ corner:-2
 one~ for:-4
 one~ from:-8
 one~ go:4
 one~ had:-6
 one~ has:-1
 one~ i:-1
 one~ into:-1
 one~ is:-1
 one~ jug:-2
 one~ last:-6
 one~ of:3
 one~ on:-6
 one~ pan:-5
 one~ pot:-6
 one~ since:5
 one~ sorry:-6
 one~ that:-1
 one~ thing:3
 one~ time:-3
 one~ to:-8
 one~ was:1
 one~ weigh:-8
 one~ went:-3
 one~ who:-7
 one~ with:-7
 one~ without:-5
 one~0:1
 one~F:-1
 one~t:-1
 one~w:-7
 onion:2
 only:3
 only~ a:1
 only~ about:7
 only~ after:-9
 only~ does:3
 only~ for:1
 only~ gave:5
 only~ got:-9
 only~ had:11
 only~ have:-3
 only~ if:-2
 only~ notic:6
 only~ one:-1
 only~ put:2
 only~ so:-5
 only~ the:-1
 only~ then:-10
 only~ there:-3
 only~ want:-7
 only~ when:2
 only~ whether:-7
 only~0:11
 only~=:-9
 only~F:-10
 only~l:-1
 onto:-1
 onto~ the:1
 on~ ::-4
 on~ a:-8
 on~ and:-9
 on~ before:-4
 on~ day:3
 on~ friday:1
 on~ glov:-3
 on~ her:-3
 on~ here:-8
 on~ high:-5
 on~ i:5
 on~ it:-5
 on~ its:-4
 on~ low:-4
 on~ me:-5
 on~ monday:-8
 on~ my:-2
 on~ offer:-6
 on~ one:-6
 on~ our:2
 on~ page:-5
 on~ paper:2
 on~ saturday:-1
 on~ slow:-1
 on~ that:-5
 on~ the:1
 on~ them:-5
 on~ this:6
 on~ thursday:2
 on~ to:-4
 on~ top:-1
 on~ tue:-1
 on~ tuesday:-5
 on~ we:-7
 on~ with:7
 on~ your:-5
 on~0:-8
 on~>:-7
 on~A:4
 on~F:6
 on~t:-4
 oops:5
 open:2
 opens:4
 open~ a:-10
 open~ all:7
 open~ since:6
 open~ the:-2
 open~ window:-4
 operator:-5
 operator~ ::-4
 opinion:-9
 opinion~ on:-4
 optional:4
 or:-3
 order:-9
 order~ of:-4
 ordinary:3
 original:-3
 or~ a:1
 or~ am:-8
 or~ did:-8
 or~ do:-4
 or~ does:-7
 or~ is:-7
 or~ it:-6
 or~ just:-5
 or~ less:-5
 or~ more:-7
 or~ no:-6
 or~ not:-2
 or~ should:-5
 or~ so:1
 or~ take:3
 or~ the:-3
 or~ thereabout:3
 or~ too:-2
 or~ was:1
 or~ will:-4
 or~0:2
 or~A:-7
 or~N:-5
 other:-3
 otherwise:-9
 otherwise~ it:-7
 other~ and:-2
 other~ way:-5
 other~0:2
 other~W:-7
 other~w:1
 ought:-6
 ought~ to:-6
 ounc:5
 ounce:-3
 ounc~ for:7
 our:-2
 ours:-9
 ours~ is:-7
 our~ club:2
 our~ course:-3
 our~ group:-9
 our~ own:-2
 our~ teacher:-8
 our~ town:-1
 our~ village:6
 out:2
 outdoor:-6
 outside:-9
 outside~ and:-1
 outside~ on:-6
 out~ ::-6
 out~ a:-1
 out~ again:5
 out~ and:4
 out~ at:3
 out~ by:5
 out~ for:3
 out~ i:-8
 out~ in:-2
 out~ like:-7
 out~ of:-2
 out~ on:2
 out~ right:-5
 out~ so:3
 out~ the:-1
 out~ to:11
 out~ what:3
 out~ with:3
 out~0:3
 out~=:-4
 out~A:-3
 out~N:1
 out~w:-1
 oval:-4
 oven:-9
 oven~ at:-3
 overfat:3
 overheat:-5
 overnight~ at:-4
 over~ ?:-6
 over~ a:1
 over~ and:2
 over~ before:-5
 over~ for:6
 over~ from:4
 over~ half:-7
 over~ in:6
 over~ it:2
 over~ my:-1
 over~ that:3
 over~ the:-3
 over~ to:2
 over~%:-8
 over~0:1
 over~d:-3
 over~t:-6
 own:3
 own~ ::-3
 own~ a:-4
 own~ line:-4
 own~0:-3
 own~F:3
 oyl:-4
 oz:1
 oz~ g:-4
 p:-6
 pack:-1
 packet:6
 packet~ of:-2
 packs~ of:-3
 paddle:-7
 page~ ::-7
 page~ for:-5
 page~ is:-5
 page~ sorry:-6
 page~0:-2
 paid~ for:6
 paid~0:-8
 pail:-9
 paint:6
 pair:3
 pairs:-6
 pair~ of:-1
 pale:-12
 pan:2
 panic:-9
 panick:2
 pantry:-6
 pan~ and:2
 paper:1
 paper~ and:-5
 paper~ cup:6
 paper~0:-4
 paper~t:-4
 parcel:6
 parent:-2
 parish:-7
 part:-1
 participant:3
 partner:-2
 parts:1
 part~ ?:3
 part~ of:2
 part~0:-10
 pass:-9
 passt:-5
 passt~ das:-5
 pass~ the:-4
 past:3
 paste:-8
 paste~ ::2
 paste~ in:-5
 paste~ is:-5
 paste~ to:-6
 paste~ went:-5
 paste~ with:-4
 pastry:3
 past~ from:-5
 past~ its:-6
 past~0:-2
 patch:-8
 patience:-6
 patient:-7
 pay:-1
 pcs:-6
 pct:-6
 pdf:-8
 peak:-6
 pearl:1
 pellet:4
 pencil:-3
 pencill:7
 pencil~ and:5
 people:-11
 people~ ask:-4
 people~ in:-3
 people~ who:-7
 people~0:-1
 per:-3
 percent:4
 percentag:-2
 perfect:-7
 perhap:9
 perhap~0:4
 period:-4
 person:-7
 per~ bar:-3
 per~ batch:1
 per~ kilo:-6
 petra:4
 ph:-9
 pharmacist:1
 pharmacy:-5
 phase:-7
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone:1
 phone~ and:5
 phone~ is:-6
 phone~ rang:8
 phone~ read:-7
 photo:-3
 photo~ of:-1
 ph~ strip:-6
 pick:3
 picture:-8
 piec:-2
 piece~ for:-6
 piece~ of:8
 piec~ of:3
 piec~0:-5
 pig:-9
 pillowcase:-4
 pinch~ of:-4
 pink:4
 pitcher:-5
 place:4
 place~ of:4
 plain:-1
 plain~ white:-2
 plain~F:-6
 plain~W:6
 plan:-3
 plann:-2
 plann~ to:2
 plan~ for:3
 plastic:2
 plastic~ cup:3
 plastic~ jug:5
 plate:2
 play:-5
 pleas:-2
 please:6
 please~ ?:2
 please~ be:-7
 please~ check:-2
 please~ dont:-9
 please~ excuse:-4
 please~ look:-8
 please~ my:6
 please~ tell:2
 please~ verify:-8
 plenty:-7
 plenty~ for:-6
 plenty~ of:-5
 pls:1
 pls~ check:-3
 plumber:-3
 plus:3
 plus~ a:3
 plus~ an:4
 plus~ another:1
 plus~ the:6
 plus~0:-4
 plus~<:-7
 plus~=:-5
 plus~w:-6
 plz:-4
 pocket:1
 point:-2
 poland:-2
 polish:-1
 polypropylene:-3
 poor:-9
 popcorn:2
 pops:-4
 porch:-4
 porridge:2
 portion:-2
 portugal:1
 possible:-5
 post:-4
 postage:-1
 postal:2
 postal~ scale:2
 postman:2
 post~ this:-7
 post~t:-2
 potato:-7
 potato~ then:-4
 pots:-2
 pot~ ::-4
 pot~ at:-7
 pot~ for:-7
 pot~ holds:2
 pot~ i:-6
 pot~ is:-5
 pot~ of:-2
 pot~ off:-7
 pot~ oils:-8
 pot~ was:3
 pot~ with:2
 pot~0:1
 pour:5
 pours:-7
 pour~ ::-6
 pour~ and:3
 pour~ at:-9
 pour~ cover:-1
 pour~ in:4
 pour~ into:-5
 pour~ it:-1
 pour~ off:5
 pour~ on:3
 pour~ out:8
 pour~ the:-7
 pour~0:4
 pour~=:3
 pour~>:-8
 pour~A:-5
 pour~F:-1
 pour~t:-3
 pour~w:-11
 powder:5
 powder~0:6
 power:-1
 power~ cut:6
 pp:-6
 ppl:-7
 practical:-8
 prefer:4
 premix:-9
 prep:-4
 present:-1
 press:-3
 press~ in:-6
 press~ into:-2
 press~ it:-2
 press~0:-8
 pretty:-7
 pretty~ but:-4
 previou:3
 pric:-6
 price:-7
 print:4
 printout:-6
 print~ on:-1
 print~0:-7
 prob:4
 problem:-2
 proces~ ::-2
 proces~ crock:-2
 proces~ in:-2
 professor:4
 project:-6
 promis:-3
 promis~ to:1
 proper:-6
 proud:-7
 ps:5
 pub:-5
 puck:-2
 pucks:-3
 puck~ dual:-6
 pudd:-5
 puddle:5
 pull:4
 pump:-1
 pure:1
 pure~F:-5
 purity:7
 push:-6
 put:3
 puts:-7
 puts~ everyth:-4
 put~ a:2
 put~ in:4
 put~ it:-2
 put~ on:-1
 put~ the:1
 put~ them:-4
 put~ together:-6
 put~0:-1
 put~<:-8
 put~=:-8
 put~>:3
 put~F:3
 put~v:1
 put~w:-1
 q:-8
 qty:-5
 quantiti:6
 quantity:-4
 quantity~ of:-4
 quarter:9
 quarter~ of:7
 question:-5
 question~ ::-5
 question~ from:-3
 question~ is:-5
 question~ to:-1
 quick:-5
 quicker:-4
 quicker~ than:-4
 quick~ one:-5
 quite:3
 quot:-5
 q~ ::-2
 r:-1
 rack:-6
 rack~ and:-1
 radiator:-4
 radio:-8
 rain:-2
 rainy:-6
 rais:-5
 ran:4
 rancid~ so:8
 rang:6
 ran~ dry:3
 ran~ out:2
 ran~ short:2
 ran~ the:-7
 rate:-4
 rather:5
 rather~ have:-1
 rather~ than:4
 raw:3
 re:-5
 reach:-4
 reach~ the:7
 reach~d:-7
 read:-1
 reader:-2
 reads:3
 reads~ in:-6
 ready:3
 ready~ for:-5
 ready~ made:2
 ready~ mixed:4
 ready~ to:-7
 read~ it:-3
 read~ that:-5
 read~ the:-2
 read~ this:-4
 read~F:3
 read~b:-1
 real:1
 realis:4
 reality:2
 real~ have:-3
 real~A:-3
 real~N:5
 reason:-2
 rebatch:5
 recall:5
 receipt:8
 recheck:3
 recip:-8
 recipe:-2
 recipe~ ::-3
 recipe~ ?:-2
 recipe~ and:-6
 recipe~ card:-2
 recipe~ for:1
 recipe~ from:-6
 recipe~ i:-3
 recipe~ in:3
 recipe~ is:-2
 recipe~ of:-3
 recipe~ on:-5
 recipe~ was:2
 reckon:5
 reckon~ it:-1
 reckon~ with:1
 record:-1
 record~0:-7
 red:4
 refill:3
 refin:1
 regard:-5
 remain:-9
 remainder:4
 remain~0:3
 remark:-7
 remark~ ::-2
 remember:2
 remember~ it:-6
 remember~ the:1
 render:-9
 render~ it:2
 render~ the:-5
 render~ twice:-5
 render~=:-4
 render~w:-4
 repeat:-7
 replac:6
 replace:-5
 replace~ it:3
 replac~ by:6
 replac~ the:-1
 reply:-7
 report:-3
 rescu:1
 rescue:6
 rest:3
 rest~ is:4
 rest~ of:-3
 rest~ was:-1
 rest~t:-2
 result:1
 retir:-7
 rev:-8
 rev~0:-7
 re~ ::-4
 ribbon:-5
 rice:-3
 rich:-11
 rid:-2
 rid~ of:-2
 right:-2
 right~ ?:-1
 right~ amount:-6
 right~ and:-5
 right~ at:2
 right~ before:1
 right~ but:5
 right~ for:-8
 right~ on:4
 right~ or:-3
 right~ so:-4
 right~ the:-1
 right~ to:-5
 right~ with:-8
 rim:-2
 ring:-7
 ring~t:-2
 rins:2
 rinse:-7
 rinse~ the:-4
 rins~ the:-1
 rises:-4
 roast:-3
 rock:-7
 roll:-6
 room:-2
 room~ for:2
 room~ temp:-4
 room~ temperature:-2
 room~0:-5
 rough:2
 rough~d:-1
 rough~w:1
 round:1
 round~ and:-4
 round~ it:-1
 round~ the:3
 round~ to:4
 row:2
 row~0:6
 rspo:-8
 rubb:-2
 rugby:-2
 rugby~ club:-3
 ruin:-3
 rule:-10
 rules:1
 run:-1
 runn:-7
 runny:7
 runs:-3
 run~ it:-7
 run~ out:-9
 run~ the:-3
 rustic:-6
 ruth:3
 s0ap:-5
 s:-6
 sack:-3
 safe:-2
 safety:-3
 safe~ ?:-4
 safe~ side:5
 safe~ to:-2
 said:-1
 said~ a:3
 said~ it:-2
 said~ my:6
 said~ no:-7
 said~ so:-8
 said~ that:-5
 said~ the:-2
 said~ yes:-8
 said~0:2
 said~b:4
 salad:-6
 sale:-7
 salt:4
 same:-1
 same~ amount:7
 same~ as:-7
 same~ bar:-4
 same~ fats:1
 same~ for:-5
 same~ in:-1
 same~ number:-7
 same~ oils:-4
 same~ pot:3
 same~ recipe:5
 same~ thing:-3
 same~ weight:10
 same~F:-3
 same~b:6
 sample:-9
 sandpaper:-4
 sane:-4
 sane~ ?:-4
 sang:-8
 sanity:-5
 sanity~ check:-5
 saponification:2
 sat:1
 saturday:-2
 sat~ on:-7
 sat~t:-4
 saucer:-4
 saves:-6
 savon:-3
 saw:8
 saw~ it:-1
 saw~ the:7
 say:4
 says:4
 says~ ::-5
 says~ and:2
 says~ but:-4
 says~ i:2
 says~ it:-5
 says~ its:-7
 says~ min:7
 says~ my:-9
 says~ that:1
 says~ the:-2
 says~%:-1
 says~0:6
 says~>:3
 says~A:1
 says~F:-1
 says~b:-2
 says~e:5
 says~t:-1
 says~v:2
 says~w:3
 say~ a:7
 say~ how:1
 say~ it:-8
 say~ its:-4
 say~ thats:-6
 say~ the:-9
 say~%:3
 say~0:9
 say~F:-7
 say~b:9
 say~w:8
 scal:-2
 scale:4
 scale~ ::-1
 scale~ and:-8
 scale~ at:6
 scale~ but:-8
 scale~ died:4
 scale~ does:-9
 scale~ for:-8
 scale~ is:1
 scale~ jumps:3
 scale~ only:3
 scale~ reads:-1
 scale~ says:2
 scale~ shows:1
 scale~ so:-8
 scale~ switch:2
 scale~ that:-1
 scale~ was:6
 scale~ with:-2
 scale~w:-6
 scar:-4
 school:-3
 school~ fair:4
 science:-8
 scoop:7
 scorch:-2
 scrap:7
 scrap~ it:-3
 scrap~ the:7
 scratch:-11
 screen:1
 scribbl:-3
 scrubb:-6
 scrubb~ the:-5
 scum:1
 seal:-4
 season:5
 second~ day:-6
 second~ go:1
 second~ half:4
 second~ one:-4
 second~ opinion:-4
 second~ pair:-1
 second~ time:3
 second~ try:-2
 secret:-7
 see:1
 seed:-5
 seem:6
 seems:-6
 see~ a:-9
 see~ here:3
 see~ how:-5
 see~ if:-7
 see~ it:-9
 see~ me:-5
 see~ that:4
 see~ through:-7
 see~ what:2
 seiz:-2
 self:-1
 self~ ::-1
 sell:-8
 seller:4
 sells:5
 sells~ at:-4
 sell~ at:-1
 sense:1
 sensible:-5
 sensible~ ?:-4
 sensitive:4
 sent:4
 sent~ me:2
 separat:-6
 separate:-8
 september:-6
 serv:3
 set:2
 sets:-10
 sets~ in:-4
 sett:-2
 settl:-2
 set~ aside:-5
 set~ in:-8
 set~ it:7
 set~ on:-4
 set~ the:-5
 set~ to:2
 set~ up:-4
 sf:4
 shade:-5
 shall:1
 shampoo:1
 shampoo~ bar:-5
 shar:1
 share:6
 sharp:-2
 shav:-4
 shave:-6
 shave~ puck:-4
 shave~ soap:-3
 shav~ puck:-4
 she:-6
 shed:-5
 sheep:-8
 sheet:1
 sheet~ ::-2
 sheet~ and:6
 sheet~ for:1
 sheet~ says:4
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-3
 shelf~ for:-2
 shes:-7
 shes~0:-4
 she~ also:2
 she~ alway:-2
 she~ asked:-5
 she~ did:-5
 she~ does:-2
 she~ gets:-8
 she~ got:-6
 she~ had:-7
 she~ has:-4
 she~ is:-4
 she~ made:-4
 she~ never:1
 she~ right:-3
 she~ said:-2
 she~ says:-4
 she~ stirr:-1
 she~ swear:-2
 she~ told:-2
 she~ used:-6
 she~ wants:4
 she~ who:-1
 she~ wrote:1
 shift:-2
 shine:-8
 shiny:-10
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-4
 shook:4
 shop:1
 shopp:-9
 shopp~ list:-5
 shops:-3
 shop~ and:7
 shop~ had:5
 shop~ soap:3
 short:4
 shortage:-5
 short~ ::4
 short~ ?:-7
 short~ burst:-1
 short~ of:-7
 short~ on:-2
 short~ so:4
 should:-1
 should~ be:-2
 should~ come:1
 should~ i:-6
 should~ read:10
 should~ say:4
 shout:-8
 show:-4
 shower:-7
 shows~ whole:-8
 shows~0:-4
 shows~w:2
 shrink:-7
 shut:1
 shut~ in:3
 side:-2
 sides:-4
 sideway:-7
 side~ of:4
 siev:-1
 sieve:-1
 siev~ it:-1
 sign:-5
 silicone:-7
 silicone~ loaf:-3
 silicone~ mould:-5
 sill:-6
 silly:10
 simp:-2
 simple:-6
 since:4
 since~ about:-5
 since~ i:-2
 since~ it:5
 since~ last:2
 since~ my:6
 since~ spr:3
 since~ the:3
 since~ then:4
 since~0:-9
 since~F:2
 since~t:2
 sink:-1
 sink~ and:-4
 sink~ of:-4
 sink~ with:-1
 sis:-3
 sister':3
 sister:-10
 sister~ in:-4
 sister~ says:-1
 sits:-1
 sits~ in:-6
 sitt:3
 sitt~ in:-3
 sitt~ on:3
 size:1
 size~ of:-4
 skin:-4
 skin~ and:-2
 skin~ is:6
 skin~ off:-5
 skip:4
 skipp:12
 skipp~ it:5
 skipp~ the:9
 skull:-5
 slab:-7
 sleep:-5
 sleev:-5
 slept:-5
 slic:-6
 slice:-6
 slid:-2
 slight:2
 slimy:-9
 slip:2
 slipp:11
 slipp~ and:8
 sliver:-5
 slosh:-3
 slow:-4
 slow~ cooker:-3
 slow~ into:-4
 slush:-6
 small:-3
 small~ print:4
 smell:-6
 smell~ a:-5
 smell~ faint:-6
 smell~ is:-6
 smell~ it:3
 smell~ like:-1
 smell~ of:-7
 smell~ the:-5
 smelt:5
 smoke:-6
 smooth:-11
 sneeze:-2
 snow~ white:-3
 so:1
 soak:8
 soap':1
 soap:-8
 soaper:-5
 soaps:-8
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-6
 soap~ and:-6
 soap~ at:-6
 soap~ attempt:-2
 soap~ day:-1
 soap~ diary:-6
 soap~ for:-6
 soap~ from:-4
 soap~ i:-2
 soap~ in:-5
 soap~ is:-6
 soap~ like:-4
 soap~ my:-3
 soap~ of:-5
 soap~ on:-5
 soap~ paste:-1
 soap~ since:-5
 soap~ so:-1
 soap~ the:-2
 soap~ to:-1
 soap~ w:-6
 soap~ was:-6
 soap~ with:-3
 soap~0:-4
 soft:-6
 softer:2
 soft~ after:-3
 soft~ as:-6
 soft~ at:-3
 soft~ for:-4
 soft~ in:-3
 soft~ so:3
 soft~ soap:-5
 sold:-7
 sold~ at:-4
 sold~ out:-4
 sold~0:-5
 soleseife:-6
 solid:-2
 solution~ and:-2
 solution~ plus:-6
 some:2
 somebody:-2
 somebody~ asked:-5
 somebody~ check:-3
 somebody~ else:-5
 somebody~ look:-6
 somebody~ run:-6
 somebody~ tell:1
 somebody~ with:-2
 someone:1
 someone~ at:-5
 someone~ check:1
 someone~ in:-8
 someone~ look:-8
 someone~ tell:2
 someone~ to:-6
 someone~ with:-6
 someth:-2
 someth~ else:-1
 someth~ like:-8
 somewhere:-2
 some~ of:3
 some~ people:-9
 some~0:-5
 some~F:-3
 some~N:8
 some~X:-2
 son:-1
 soon:-6
 sooner:-6
 sooner~ than:-6
 sorry~ for:-4
 sorry~ if:2
 sorry~ it:-6
 sorry~ my:-5
 sorry~ the:4
 sort:3
 sort~ of:-6
 sound:-6
 sound~ like:-8
 sound~ right:2
 soup:-4
 sour:-1
 source:4
 source~ ::6
 so~ ::-5
 so~ ?:3
 so~ a:2
 so~ all:2
 so~ another:7
 so~ before:-3
 so~ call:6
 so~ did:-3
 so~ do:-2
 so~ does:-7
 so~ dont:1
 so~ excuse:-5
 so~ far:-2
 so~ fast:-3
 so~ for:-7
 so~ good:5
 so~ half:3
 so~ here:-5
 so~ hot:-3
 so~ i'd:-6
 so~ i:-5
 so~ if:-6
 so~ im:1
 so~ in:5
 so~ is:3
 so~ it:2
 so~ its:6
 so~ ive:-6
 so~ just:5
 so~ keep:-8
 so~ little:-7
 so~ maybe:2
 so~ much:-5
 so~ my:4
 so~ no:4
 so~ noth:-1
 so~ now:-5
 so~ of:6
 so~ on:-4
 so~ please:3
 so~ sorry:-6
 so~ take:2
 so~ that:-8
 so~ thats:5
 so~ the:1
 so~ ther:3
 so~ there:-4
 so~ this:-4
 so~ those:2
 so~ um:3
 so~ we:-4
 so~ what:5
 so~ whats:4
 so~ who:4
 so~ you:-1
 so~%:-7
 so~0:7
 so~=:2
 so~N:11
 so~b:2
 so~e:-10
 so~l:-6
 so~t:-3
 so~w:-2
 spa:2
 space:-6
 spain:-7
 spare:-2
 spatula:-8
 speak:-1
 speed:-6
 spell:-9
 spend:-5
 spent:1
 spill:-5
 spill~ on:1
 spilt:2
 splash:5
 splash~ of:2
 split:2
 split~ it:3
 split~ the:1
 spoon:-1
 spoonful:4
 spoonful~ of:-2
 spoon~ and:2
 spoon~ at:-7
 spoon~ by:-7
 spoon~ for:1
 spoon~ in:-4
 spoon~ into:-4
 spoon~ it:-4
 spoon~ of:3
 spoon~ slipp:8
 spot:-9
 spots:-1
 spots~ after:-2
 spot~ on:-5
 spray:-6
 spreadsheet:-6
 sprinkl:-8
 sprinkle:-2
 sprinkle~ the:-2
 sprinkl~=:-1
 spr~ and:1
 spr~ i:-1
 squeez:6
 sry:1
 stable:-6
 stack:-2
 stag:-8
 stage:-2
 stage~ at:-2
 stain:-7
 stainles:-5
 stamp:-12
 stamp~ and:-5
 stand:-5
 standard:-6
 stand~ ::-2
 stand~ at:3
 stand~ for:-4
 stand~ it:4
 stand~ on:4
 stand~ the:-3
 stand~ there:-3
 stand~ up:1
 stank:-7
 start:-1
 start~ ::-4
 start~ and:-7
 start~ at:-2
 start~ the:-4
 start~ to:-7
 start~ with:4
 start~t:-5
 static:1
 stay:3
 stays:-5
 stays~ as:2
 stays~ in:-6
 stay~ at:3
 stay~ clear:4
 stay~ cloudy:-2
 stay~ in:8
 stay~ on:2
 stay~ soft:-6
 steam:-12
 steel:1
 steel~ jug:-6
 steel~ pot:-6
 step:-5
 steps:2
 steps~ of:5
 stick:-2
 sticker:-3
 sticky:2
 stick~ blend:-2
 stick~ blender:-8
 stick~ to:1
 stiff:5
 still:1
 still~ a:-9
 still~ cloudy:1
 still~ good:7
 still~ got:-6
 still~ had:4
 still~ have:-1
 still~ in:6
 still~ like:-7
 still~ ok:-7
 still~ on:4
 still~ sitt:7
 still~ smell:-4
 still~ soap:-6
 still~ soft:-1
 still~ stand:4
 sting:-6
 stingy:1
 stink:-9
 stir:-5
 stirr:-1
 stirr~ and:-5
 stirr~ every:-7
 stirr~ for:-2
 stirr~ in:5
 stirr~ into:6
 stirr~ it:-8
 stirr~ one:-5
 stirr~ the:-2
 stirr~ with:-4
 stirr~t:-2
 stirs:-6
 stir~ by:-4
 stir~ every:-1
 stir~ for:-2
 stir~ in:-1
 stir~ it:2
 stir~ the:-9
 stir~ till:-2
 stir~ until:-3
 stir~ with:-4
 stir~0:-5
 stir~=:-4
 stir~t:-3
 stock:1
 stood:1
 stood~ at:3
 stood~ in:3
 stop:-7
 stopp:8
 stopp~ at:9
 stops:-4
 stor:-4
 store:2
 store~ the:-5
 stove:6
 straight:-2
 straight~ away:-4
 straight~ from:-6
 straight~ into:-5
 straight~ out:5
 straight~ to:2
 strain:6
 strainer:-6
 strain~ it:-5
 strain~ the:-1
 strain~ through:-9
 strain~ twice:1
 streak:-5
 stream:-3
 street:-5
 strength:3
 stretch:3
 strike:4
 strip:-7
 stripp:-6
 stripp~ the:-5
 strip~ says:-6
 strip~0:-2
 strong:4
 stronger:1
 strong~ ?:-7
 strong~ for:-5
 struck:4
 struck~ out:2
 stuck:4
 stuck~ in:3
 stuck~ to:2
 stuff:-2
 stupid:-6
 style:-4
 subject:-2
 subject~ ::-3
 such:2
 suds:-6
 suggest:-1
 suits:-5
 sum:-2
 summer~ and:9
 sums:-2
 sun:2
 sunday~ ::-6
 sunday~ and:1
 sunday~ in:-7
 sunday~ roast:1
 superfat:6
 superfat~ ::4
 superfat~ ?:-4
 superfat~ and:-7
 superfat~ at:1
 superfat~ did:-10
 superfat~ do:-4
 superfat~ for:3
 superfat~ i:-1
 superfat~ in:3
 superfat~ is:-11
 superfat~ of:-10
 superfat~ on:-5
 superfat~ should:-10
 superfat~%:2
 superfat~0:3
 supermarket:-4
 supplier:2
 suppose:-1
 sure:3
 sure~ about:-10
 sure~ of:3
 surface:-7
 surviv:-1
 survive:-6
 suspect:5
 swap:-6
 swapp:7
 swapp~ for:3
 swapp~ the:1
 swapp~F:6
 swaps:-10
 swap~ the:-1
 swear:3
 swear~ by:-2
 swear~ it:-7
 swear~ to:8
 sweat:-7
 sweat~ in:-3
 sweet:-6
 swirl:-8
 swirl~ with:-5
 switch:1
 switch~ itself:-1
 switch~ off:-5
 switch~ to:-3
 swore:-5
 t:-7
 ta:-5
 tabl:-6
 table:3
 tablespoon:5
 table~ is:-6
 table~0:-10
 tabs:-5
 taffy:-10
 tag:2
 tak:5
 take:3
 taken:3
 takes:-14
 takes~ about:-1
 takes~ its:-5
 takes~ the:-4
 takes~=:-1
 takes~t:-4
 take~ it:-6
 take~ off:-3
 take~ that:5
 take~ the:-5
 take~ your:2
 take~0:-9
 take~=:-4
 take~w:-9
 talk:-9
 tall:-6
 tan:-6
 tap:1
 tape:-7
 tared:7
 target:1
 tast:-10
 taste:3
 taught:-6
 taught~ me:-3
 teach:-1
 teacher:-2
 team:-3
 technical:10
 technical~ grade:8
 telephone:-4
 tell:-3
 tells:-4
 tells~ me:-4
 tell~ me:2
 tell~ my:-7
 tell~ them:-7
 tell~ us:-8
 tell~ whether:1
 tell~ you:2
 temp:-5
 temperature:-8
 temps:-5
 temp~d:-1
 tenth:3
 tenth~ of:3
 term:-5
 test:-3
 tester:2
 test~ ::-5
 test~ at:-10
 test~ it:3
 test~ ok:-3
 test~ on:1
 test~ with:-4
 text:-4
 than:-1
 thank:-6
 thank~ for:-6
 thank~ to:-2
 thank~ you:-6
 than~ a:-1
 than~ i:3
 than~ it:4
 than~ my:3
 than~ that:-4
 than~ the:-4
 than~ usual:3
 than~0:1
 than~d:-5
 that:5
 thats~ a:-6
 thats~ all:-6
 thats~ how:4
 thats~ it:-6
 thats~ my:-7
 thats~ the:-3
 thats~ what:5
 thats~ why:-8
 thats~>:-2
 thats~l:-11
 that~ ?:5
 that~ a:-7
 that~ about:-5
 that~ and:5
 that~ be:3
 that~ bit:3
 that~ came:-1
 that~ day:7
 that~ enough:-2
 that~ from:-7
 that~ goes:-2
 that~ had:-1
 that~ has:-5
 that~ i'd:-4
 that~ i:3
 that~ im:1
 that~ in:-1
 that~ into:-2
 that~ isnt:1
 that~ it:-10
 that~ its:2
 that~ look:-2
 that~ makes:-7
 that~ matter:3
 that~ mine:5
 that~ much:-2
 that~ my:2
 that~ never:7
 that~ nobody:2
 that~ noth:-5
 that~ off:8
 that~ okay:-1
 that~ on:2
 that~ one:-6
 that~ out:5
 that~ right:-2
 that~ she:1
 that~ solution:-9
 that~ sound:-2
 that~ still:-5
 that~ the:4
 that~ ther:-6
 that~ too:-7
 that~ was:-7
 that~ we:-6
 that~ went:-2
 that~ you:-4
 that~0:10
 that~=:-5
 that~A:-2
 that~F:1
 that~L:3
 that~b:6
 thaw:-1
 the:1
 their:-5
 their~ own:-1
 them:-1
 themselv:-2
 them~ ::-3
 them~ and:-4
 them~ for:-1
 them~ is:-2
 them~ out:3
 them~ to:-6
 them~ together:3
 them~0:-3
 them~t:-6
 then:-1
 then~ ?:-1
 then~ add:-4
 then~ at:-5
 then~ i:4
 then~ in:-6
 then~ into:-5
 then~ it:3
 then~ its:-8
 then~ like:-4
 then~ my:3
 then~ pour:-6
 then~ stir:-4
 then~ stirr:-2
 then~ the:-9
 then~ weigh:-8
 then~0:2
 then~<:3
 then~=:-5
 then~>:-2
 then~A:-7
 then~F:-3
 then~S:-5
 then~W:1
 then~e:-7
 then~t:-5
 then~v:6
 then~w:-1
 ther:3
 there:4
 thereabout:3
 therefore:3
 there~ ?:-7
 there~ are:-1
 there~ enough:-3
 there~ may:4
 there~ so:-5
 there~ too:5
 there~ was:-1
 there~ were:2
 there~ with:-3
 thermometer:-10
 ther~ also:2
 ther~ no:-8
 ther~0:4
 ther~F:-4
 these:-8
 these~ are:-4
 these~ days:5
 these~ fats:-3
 these~ oils:-3
 they:-4
 theyd:4
 theyll:-4
 theyre:-8
 they~ are:7
 they~ do:-8
 they~ had:-1
 they~ say:2
 they~ went:2
 they~ were:-7
 the~ above:5
 the~ air:-4
 the~ allotment:-5
 the~ amount:-3
 the~ answer:-2
 the~ app:3
 the~ attic:-3
 the~ autumn:-8
 the~ baby:1
 the~ back:1
 the~ bag:4
 the~ balance:-6
 the~ balcony:1
 the~ bar:2
 the~ bars:-11
 the~ batch:-4
 the~ bath:-7
 the~ bathroom:2
 the~ batter:-8
 the~ battery:-1
 the~ beaker:4
 the~ beginn:-1
 the~ bell:-8
 the~ bench:-5
 the~ best:-4
 the~ bin:-3
 the~ birds:-3
 the~ bit:-3
 the~ blender:1
 the~ block:5
 the~ blog:-5
 the~ blue:1
 the~ board:2
 the~ book:-4
 the~ bottl:-7
 the~ bottle:5
 the~ bottom:-1
 the~ bowl:6
 the~ box:2
 the~ boys:3
 the~ brim:-2
 the~ bubbl:-5
 the~ bucket:1
 the~ bus:-3
 the~ butcher:1
 the~ camp:1
 the~ can:2
 the~ candle:-5
 the~ canister:6
 the~ car:-7
 the~ card:-5
 the~ caretaker:-7
 the~ cat:1
 the~ ceil:-4
 the~ cellar:-8
 the~ certifi:-6
 the~ certificate:4
 the~ cheap:-8
 the~ chemist:-2
 the~ children:1
 the~ choir:-4
 the~ christma:1
 the~ church:-3
 the~ class:-7
 the~ clean:-2
 the~ clock:-2
 the~ club:-1
 the~ clubs:-1
 the~ cold:2
 the~ column:-3
 the~ comma:3
 the~ comment:-6
 the~ cooker:1
 the~ cool:-5
 the~ corner:-5
 the~ cost:-6
 the~ counter:4
 the~ county:-4
 the~ course:2
 the~ crock:-1
 the~ crockpot:-1
 the~ crumb:1
 the~ cubes:-6
 the~ cup:-3
 the~ cupboard:-1
 the~ cure:-9
 the~ date:-7
 the~ day:-3
 the~ decimal:-4
 the~ difference:2
 the~ discount:-2
 the~ dish:4
 the~ dog:1
 the~ door:-3
 the~ dot:-6
 the~ doubl:-6
 the~ double:-3
 the~ drain:3
 the~ drawer:1
 the~ drum:7
 the~ edge:-4
 the~ edges:-2
 the~ empty:-8
 the~ end:3
 the~ ends:-8
 the~ even:-9
 the~ extra:1
 the~ face:-6
 the~ fami:1
 the~ farm:-1
 the~ fat:-4
 the~ fats:2
 the~ feed:3
 the~ fence:-6
 the~ figur:-5
 the~ figure:4
 the~ finish:-2
 the~ first:-2
 the~ flak:4
 the~ flat:-2
 the~ floor:6
 the~ foam:-9
 the~ freezer:-5
 the~ fridge:-1
 the~ front:1
 the~ fryer:1
 the~ full:3
 the~ fumes:-8
 the~ funnel:3
 the~ garage:-3
 the~ garden:-3
 the~ gas:-5
 the~ gel:1
 the~ glass:1
 the~ goat:3
 the~ goats:5
 the~ goggl:-2
 the~ good:-3
 the~ gram:-6
 the~ greasy:-8
 the~ green:-1
 the~ group:1
 the~ half:5
 the~ hall:-5
 the~ hand:-4
 the~ handout:3
 the~ hands:-1
 the~ hard:-6
 the~ hardware:-5
 the~ heat:-8
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-3
 the~ hood:-6
 the~ hot:2
 the~ house:8
 the~ internet:-3
 the~ jar:-1
 the~ jars:-8
 the~ jug:-3
 the~ kettle:6
 the~ kids:-3
 the~ kilo:6
 the~ kitchen:-3
 the~ label:5
 the~ lads:-3
 the~ lady:-4
 the~ last:4
 the~ lather:-1
 the~ laundry:1
 the~ leaflet:2
 the~ letter:3
 the~ library:-6
 the~ lid:1
 the~ light:-5
 the~ line:5
 the~ liquid:7
 the~ list:10
 the~ litre:8
 the~ loaf:-5
 the~ log:-7
 the~ long:2
 the~ lot:3
 the~ lowest:-5
 the~ machine:-5
 the~ man:-5
 the~ margin:-2
 the~ mark:7
 the~ market:-5
 the~ mass:-5
 the~ measur:2
 the~ mechanic:3
 the~ melt:-1
 the~ mess:-5
 the~ microwave:1
 the~ middle:-6
 the~ mill:-6
 the~ miss:5
 the~ mix:6
 the~ mold:1
 the~ month:-4
 the~ moon:-3
 the~ morn:-7
 the~ most:-9
 the~ mould:-2
 the~ name:-6
 the~ neighbour:-4
 the~ next:-5
 the~ night:-5
 the~ normal:-5
 the~ number:1
 the~ oil:1
 the~ oils:1
 the~ one:1
 the~ ones:-3
 the~ only:-7
 the~ open:3
 the~ order:-8
 the~ original:2
 the~ other:2
 the~ outside:1
 the~ oven:-9
 the~ packet:7
 the~ page:-6
 the~ pan:3
 the~ pantry:-9
 the~ paper:8
 the~ parish:-7
 the~ past:1
 the~ paste:-4
 the~ patience:-5
 the~ phone:4
 the~ photo:4
 the~ picture:-5
 the~ place:6
 the~ plain:-6
 the~ plan:1
 the~ plastic:3
 the~ plate:5
 the~ point:-2
 the~ porch:-4
 the~ post:1
 the~ postman:2
 the~ pot:1
 the~ potato:-7
 the~ pour:-5
 the~ powder:5
 the~ power:-3
 the~ present:1
 the~ price:-6
 the~ printout:-6
 the~ question:-9
 the~ rack:-5
 the~ radiator:-4
 the~ radio:-6
 the~ rain:-2
 the~ ready:6
 the~ real:-8
 the~ reason:-7
 the~ record:1
 the~ remain:-2
 the~ render:-3
 the~ rest:1
 the~ right:-7
 the~ roof:3
 the~ room:1
 the~ row:-6
 the~ rugby:-2
 the~ sack:-3
 the~ safe:5
 the~ salad:2
 the~ same:1
 the~ scale:-2
 the~ school:2
 the~ scum:1
 the~ second:2
 the~ sf:-5
 the~ shed:-1
 the~ sheet:7
 the~ shelf:-2
 the~ shop:3
 the~ shops:-6
 the~ shower:-7
 the~ side:7
 the~ sink:2
 the~ skin:-5
 the~ slip:-1
 the~ slow:-2
 the~ small:2
 the~ smell:1
 the~ soap':3
 the~ soap:-3
 the~ spatula:-2
 the~ spoon:-1
 the~ spr:-7
 the~ stall:2
 the~ start:1
 the~ steel:5
 the~ stick:-8
 the~ stirr:-7
 the~ stove:6
 the~ suds:-3
 the~ sum:-2
 the~ summer:-1
 the~ sums:1
 the~ sun:2
 the~ sunday:7
 the~ superfat:-4
 the~ supermarket:-4
 the~ surface:-7
 the~ swirl:-4
 the~ table:5
 the~ tap:-5
 the~ teacher:1
 the~ temperature:-5
 the~ test:2
 the~ thermometer:-7
 the~ thing:-3
 the~ third:-2
 the~ thread:-5
 the~ thursday:-6
 the~ tiles:5
 the~ time:1
 the~ tin:6
 the~ tongue:-1
 the~ top:-2
 the~ train:-6
 the~ tray:-2
 the~ trimming:1
 the~ tub:2
 the~ unrefin:-6
 the~ usual:5
 the~ varnish:-4
 the~ village:-3
 the~ wall:-7
 the~ war:-8
 the~ wardrobe:-5
 the~ warm:3
 the~ wash:-4
 the~ way:4
 the~ weather:-7
 the~ weekend:-10
 the~ weigh:8
 the~ weight:3
 the~ whisk:2
 the~ white:2
 the~ whole:-1
 the~ window:-6
 the~ windowsill:3
 the~ winter:-5
 the~ wire:-3
 the~ wood:-2
 the~ wooden:-5
 the~ word:-5
 the~ workshop:-3
 the~ worktop:-2
 the~ wrong:4
 the~ yard:-6
 the~ year:-7
 the~<:-6
 the~=:-3
 the~>:-1
 the~A:2
 the~B:-8
 the~C:-13
 the~F:5
 the~I:3
 the~K:4
 the~L:-2
 the~M:3
 the~N:-2
 the~S:-3
 the~T:-5
 the~W:5
 the~X:-4
 the~b:5
 the~l:-1
 the~t:-2
 the~v:-8
 the~w:-6
 thick:-3
 thicken:-4
 thicker:-9
 thick~ as:1
 thick~ like:-6
 thick~ trace:-2
 thin:-4
 thing:-3
 thing~ ?:-7
 thing~ and:-3
 thing~ i:-6
 thing~ in:-5
 think:1
 think~ ?:-7
 think~ about:1
 think~ i:8
 think~ it:1
 think~ its:-1
 think~ of:-8
 think~ that:-8
 think~ the:4
 thinn:6
 thin~ stream:-3
 thin~ trace:-8
 third:2
 third~ attempt:-6
 third~ go:4
 third~ of:2
 third~ time:-7
 this:3
 this~ ::3
 this~ ?:-7
 this~ a:-5
 this~ and:-8
 this~ batch:-3
 this~ be:-2
 this~ because:-4
 this~ before:-3
 this~ but:-6
 this~ for:5
 this~ from:2
 this~ house:5
 this~ i:-4
 this~ in:-1
 this~ is:-6
 this~ loaf:2
 this~ look:-4
 this~ morn:1
 this~ ok:-3
 this~ on:-6
 this~ one:6
 this~ ones:3
 this~ or:-7
 this~ pot:3
 this~ recipe:-9
 this~ right:-3
 this~ time:4
 this~ to:-4
 this~ was:-5
 this~ way:-4
 this~ week:-2
 this~ weekend:2
 this~ with:-7
 this~ year:3
 this~0:-9
 tho:-1
 those~ are:3
 those~ days:-6
 those~ fats:-1
 those~ oils:-2
 those~ who:4
 those~0:3
 though:2
 thought~ ?:-4
 thought~ i'd:-5
 thought~ i:-2
 thought~ it:-4
 thought~ on:-7
 though~ i:2
 thread:-7
 threw:5
 threw~ in:6
 threw~ the:-4
 throughout:-2
 through~ a:-2
 through~ an:-10
 through~ it:-4
 through~ the:3
 throw:-5
 thrown:5
 thru:1
 thumb:-3
 thursday:-5
 thx:-4
 tick:-1
 til:-4
 tiles:5
 till~ it:2
 till~ its:-2
 till~ the:-1
 till~0:-4
 time:-3
 timer:-8
 times:2
 times~ i:3
 times~ in:-4
 times~0:10
 time~ and:-5
 time~ because:2
 time~ in:3
 time~ is:-4
 time~ it:-9
 time~ lurker:-4
 time~ post:-4
 time~ so:4
 time~ the:2
 time~ to:-3
 time~ with:-7
 time~0:-1
 time~t:-4
 tin:-1
 tins:-7
 tins~ of:-3
 tiny:-1
 tin~ and:-1
 tin~ is:-7
 tin~ of:-4
 tin~ was:-2
 tin~ with:-9
 tip:-3
 tipp:7
 tipp~ in:6
 tipp~ the:-2
 tips:-6
 tip~ ::-5
 title:-1
 title~ ::-4
 to:-1
 toast:-5
 today:-5
 today~ ::5
 today~ ?:-5
 today~ and:1
 toddler:3
 together:-2
 together~ ?:-3
 together~ in:-6
 together~ with:-6
 told:-5
 told~ her:-4
 told~ me:-3
 told~ us:-6
 told~F:-2
 tom:-2
 tomato:6
 tomorrow:-5
 tongue:-3
 tonight:6
 tonight~ ::-7
 tonight~ ?:-3
 too:2
 took:2
 took~ a:-5
 took~ ages:-4
 took~ forever:3
 took~ it:-2
 took~ me:-8
 took~ off:2
 took~ the:1
 took~0:-2
 took~<:2
 took~=:-10
 took~>:-7
 took~N:4
 took~l:-1
 took~t:-10
 took~w:-5
 tools:-6
 too~ ?:-6
 too~ and:4
 too~ cold:-4
 too~ dry:-3
 too~ early:-7
 too~ fast:-3
 too~ hard:-4
 too~ harsh:-3
 too~ high:-7
 too~ hot:-6
 too~ late:-2
 too~ little:3
 too~ low:4
 too~ many:6
 too~ much:-5
 too~ quick:4
 too~ sharp:-4
 too~ soft:-4
 too~ soon:-6
 too~ strong:-1
 topp:9
 topp~ it:5
 topp~ the:4
 topp~ up:6
 top~ for:-3
 top~ is:-3
 top~ of:2
 top~ shelf:-6
 top~ which:-4
 total:1
 total~ of:-8
 touch:-5
 touch~ it:-4
 touch~ the:-8
 towel:-5
 towel~ over:-4
 towel~ round:-7
 towel~t:-1
 to~ a:1
 to~ about:-1
 to~ add:-2
 to~ ask:-4
 to~ be:3
 to~ bed:-4
 to~ buy:-7
 to~ check:-5
 to~ come:4
 to~ cool:-10
 to~ cut:-4
 to~ everyone:4
 to~ find:-4
 to~ finish:7
 to~ get:-5
 to~ grate:-2
 to~ hand:1
 to~ have:3
 to~ hear:1
 to~ help:6
 to~ her:-7
 to~ hold:3
 to~ it:1
 to~ keep:-7
 to~ know:-3
 to~ light:-2
 to~ look:-8
 to~ make:2
 to~ me:1
 to~ melt:-8
 to~ my:-1
 to~ open:-7
 to~ pour:-3
 to~ put:4
 to~ remember:-8
 to~ rough:-2
 to~ say:-1
 to~ see:1
 to~ self:-1
 to~ sell:-2
 to~ set:1
 to~ slush:-8
 to~ soap:-7
 to~ someth:-3
 to~ spare:-3
 to~ spoon:-4
 to~ take:5
 to~ tell:-1
 to~ test:-5
 to~ that:-6
 to~ the:-2
 to~ thicken:-3
 to~ this:-9
 to~ throw:-6
 to~ trace:-10
 to~ try:-4
 to~ unmould:-4
 to~ use:-3
 to~ wait:1
 to~ wash:2
 to~ waste:5
 to~ weigh:-6
 to~ write:1
 to~ you:-6
 to~%:5
 to~0:-1
 to~<:6
 to~=:-3
 to~>:5
 to~F:-10
 to~T:-3
 to~X:-4
 to~b:-3
 to~d:-4
 to~e:-3
 to~t:2
 to~w:-5
 trac:-7
 trace:2
 trace~ ::-8
 trace~ add:3
 trace~ after:-5
 trace~ and:-6
 trace~ at:-2
 trace~ because:6
 trace~ came:-4
 trace~ i:-5
 trace~ in:-8
 trace~ stir:-6
 trace~ then:-2
 trace~ was:-4
 trace~0:-5
 trace~t:-6
 track:4
 tractor:-4
 trac~ after:-2
 trac~ in:-5
 trade:-9
 trail:-4
 train:-7
 translat:-4
 translate:-4
 translat~ from:-3
 translucent:-3
 tray:-5
 trays:-4
 treat:-4
 trees:1
 trial:-8
 trick:-8
 trick~ for:-5
 tried:-8
 tried~ it:1
 trimm:1
 trimming:-2
 tripl:-7
 trouble:-3
 trust:-6
 trust~ it:-7
 trust~ the:-5
 truth:6
 try:-14
 try~ it:-8
 try~ to:-2
 tub:-1
 tube:-4
 tubs:3
 tub~ ::-7
 tub~ and:-7
 tub~ is:-5
 tub~ of:-4
 tub~ says:-8
 tue:-3
 tuesday:4
 tue~t:-1
 turn:-2
 turns~ out:6
 turns~0:-4
 turn~ it:-2
 turn~ out:6
 turn~ the:-3
 turn~ to:1
 turn~S:-4
 tutor:-3
 twentieth:3
 twice:2
 twice~ a:-4
 twice~ and:4
 twice~ before:-8
 twice~ i:3
 twice~ with:-6
 typ:-7
 type:3
 typed:8
 typed~ the:7
 typo:1
 u:-9
 ugh:-2
 ugly:-7
 um:2
 uncl:-5
 uncle:-3
 under:-4
 underneath:-6
 understand:-4
 under~ a:-2
 under~ it:5
 under~ the:2
 under~0:-8
 under~d:-3
 under~t:-2
 under~w:-6
 unit:-4
 units:-7
 unit~ ::-3
 unles:1
 unmold:-7
 unmould:-7
 unmould~ after:-5
 unmould~t:-1
 unrefin:-9
 unsaponifi:9
 unscent:-6
 until:-1
 until~ a:-4
 until~ both:-1
 until~ it:1
 until~ its:-4
 until~ the:3
 until~ you:-3
 until~t:-1
 up:5
 update:3
 upon:2
 up~ ::2
 up~ ?:-6
 up~ again:-7
 up~ by:3
 up~ for:-8
 up~ i:-7
 up~ in:-3
 up~ like:-4
 up~ my:-1
 up~ on:7
 up~ the:3
 up~ there:5
 up~ to:3
 up~ with:1
 up~0:9
 ur:-7
 use:-3
 used:2
 used~ a:-1
 used~ for:1
 used~ that:4
 used~ the:7
 used~ to:-9
 used~ up:2
 used~0:-2
 used~=:-6
 used~>:-5
 used~F:-5
 used~L:3
 used~N:-5
 used~l:-2
 uses:-4
 use~ ?:-2
 use~ for:-1
 use~ in:-3
 use~ it:-7
 use~ the:-6
 use~ up:6
 use~=:1
 use~>:4
 use~F:-6
 use~I:-6
 use~N:-2
 use~l:-3
 using:2
 using~=:-6
 usual:2
 us~ the:-3
 vanish:-4
 varnish:-4
 vegan:-9
 vegetable:-6
 vegetarian:-8
 verdict:-4
 verify:-7
 verify~ the:-6
 version:-5
 version~ ::-2
 version~0:4
 very:-1
 very~ end:1
 very~ first:-7
 very~ nice:-4
 vet:-6
 video:-8
 village:-2
 village~ hall:-1
 virgin:-6
 voice:3
 volcano:-9
 volume:1
 wait:-4
 waits:2
 wait~ for:-8
 wait~ i:-7
 wait~ till:-3
 wait~ until:-7
 wait~t:-3
 walk:3
 wall:-3
 want:3
 wants:-4
 wants~ a:-3
 wants~ it:-4
 wants~ me:-2
 wants~ some:-2
 wants~ the:-6
 wants~ to:-4
 want~ a:-3
 want~ the:6
 want~ to:-3
 want~%:1
 want~0:7
 want~F:-9
 war:-9
 wardrobe:-6
 warm:-7
 warmth:-5
 warm~ in:-5
 warm~ it:-3
 warm~ oils:5
 warm~ the:-9
 warm~ to:-7
 warm~F:-4
 warn:-8
 was:5
 wash:-6
 wash~ it:2
 wash~ the:2
 wash~ up:-1
 wash~ with:-6
 wasnt:13
 wasnt~ enough:1
 wast:3
 was~ a:1
 was~ about:-1
 was~ all:1
 was~ already:4
 was~ at:-6
 was~ call:1
 was~ clean:-3
 was~ clear:-5
 was~ cold:4
 was~ done:1
 was~ empty:10
 was~ fine:-1
 was~ finish:5
 was~ for:-2
 was~ from:1
 was~ going:-5
 was~ gone:-4
 was~ hard:-6
 was~ hot:-3
 was~ in:4
 was~ it:-4
 was~ like:3
 was~ made:-2
 was~ meant:6
 was~ melt:3
 was~ my:-5
 was~ near:4
 was~ never:-3
 was~ no:-2
 was~ not:10
 was~ off:7
 was~ old:-5
 was~ on:2
 was~ one:5
 was~ only:1
 was~ open:5
 was~ out:4
 was~ over:4
 was~ pour:3
 was~ ready:-2
 was~ real:6
 was~ right:-5
 was~ so:4
 was~ stand:6
 was~ still:2
 was~ stirr:-2
 was~ that:-5
 was~ the:-4
 was~ there:5
 was~ thick:-4
 was~ told:2
 was~ too:-6
 was~ under:-5
 was~ very:-8
 was~ warm:-6
 was~ weigh:5
 was~ what:-2
 was~ with:2
 was~%:-7
 was~0:-3
 was~<:4
 was~=:-7
 was~>:-9
 was~A:5
 was~F:4
 was~L:5
 was~N:3
 was~X:5
 was~b:4
 was~d:-7
 was~e:5
 was~l:-8
 was~t:-8
 was~v:1
 was~w:6
 watch:-6
 watch~ the:-6
 water:3
 water~ bath:-6
 waxy:-5
 way:2
 way~ about:2
 way~ in:7
 way~ of:-7
 way~ round:-2
 we:1
 wear:-8
 wear~ goggl:-5
 weather:-6
 wedd:2
 wedd~ favour:2
 wednesday:-7
 week:-5
 weekend:-2
 weeks:-1
 week~ and:-7
 week~ so:5
 week~0:-8
 weigh:-1
 weight:3
 weight~ ::-8
 weight~ and:1
 weight~ g:-4
 weight~ in:2
 weight~ made:-7
 weight~ of:-3
 weight~ oz:-5
 weight~ so:-6
 weight~A:-6
 weigh~ ?:-7
 weigh~ a:-6
 weigh~ after:3
 weigh~ again:4
 weigh~ anyth:-1
 weigh~ as:3
 weigh~ by:5
 weigh~ everyth:-9
 weigh~ i:-6
 weigh~ in:1
 weigh~ it:1
 weigh~ like:1
 weigh~ my:6
 weigh~ on:1
 weigh~ one:-2
 weigh~ out:-7
 weigh~ the:2
 weigh~0:2
 weigh~<:-6
 weigh~=:-7
 weigh~F:-4
 weigh~e:4
 weigh~l:-2
 weigh~w:-8
 welcome:-5
 well~ and:-4
 well~ as:-4
 well~ be:6
 well~ have:7
 went:3
 went~ a:4
 went~ above:-5
 went~ away:-7
 went~ back:-2
 went~ brown:-6
 went~ by:-3
 went~ clear:-7
 went~ cloudy:-7
 went~ dark:-2
 went~ down:6
 went~ for:4
 went~ from:-9
 went~ in:8
 went~ into:5
 went~ on:3
 went~ over:3
 went~ the:-4
 went~ through:2
 went~ to:-5
 went~ up:1
 went~ with:4
 went~ without:3
 went~ wrong:-4
 went~ yellow:-7
 went~=:-7
 went~S:-6
 were:2
 were~ a:-2
 were~ at:-6
 were~ on:-5
 were~0:2
 were~F:1
 were~w:-2
 wet:5
 wet~ cloth:-4
 wet~ dog:-3
 weve:-3
 we~ are:-1
 we~ count:-6
 we~ cut:-6
 we~ did:3
 we~ do:2
 we~ got:-7
 we~ had:1
 we~ have:-5
 we~ keep:-7
 we~ made:-7
 we~ make:3
 we~ pour:-4
 we~ put:-6
 we~ render:-2
 we~ say:3
 we~ use:-8
 we~ used:-4
 we~ want:3
 we~ weigh:1
 we~ were:5
 what:3
 whatever:6
 whatever~ the:8
 whatever~ was:9
 whats:-1
 whatsoever:1
 whats~ in:3
 whats~ the:-4
 what~ a:-7
 what~ came:4
 what~ did:-4
 what~ do:-1
 what~ does:-7
 what~ g:-4
 what~ happen:-6
 what~ how:-8
 what~ i'd:3
 what~ i:7
 what~ im:4
 what~ is:-5
 what~ it:1
 what~ my:-1
 what~ remain:-2
 what~ she:-4
 what~ superfat:-9
 what~ the:1
 what~ they:5
 what~ was:-4
 what~ we:-1
 what~ would:-6
 what~ you:-3
 what~ youd:-1
 when:-1
 whenever:-2
 when~ both:-7
 when~ cut:-6
 when~ i:2
 when~ it:1
 when~ its:-1
 when~ the:2
 when~ wash:5
 when~ you:1
 when~F:-9
 where:4
 where~ i:-5
 where~ it:8
 where~ she:-7
 where~ the:3
 where~ you:3
 whether:-3
 whether~ it:-4
 whether~ the:1
 whether~F:-9
 whether~b:-5
 which:3
 which~ bring:-1
 which~ has:-2
 which~ i:5
 which~ is:-4
 which~ makes:-4
 which~ of:4
 which~ one:8
 which~ the:1
 which~ was:-3
 which~F:-8
 while:-3
 while~ i:5
 while~ the:-8
 whipp:3
 whisk:-7
 white:-8
 whiteboard:-7
 whiter:-5
 white~ and:2
 white~ as:-7
 white~ powder:-4
 white~ spots:-3
 white~F:-2
 who:-1
 whoever:-1
 whole:1
 whole~ grams:-8
 whole~ thing:4
 whole~ time:-2
 whos:-3
 whose:3
 whos~ right:-3
 who~ asked:-6
 who~ cant:2
 who~ has:-4
 who~ is:-5
 who~ knows:6
 who~ taught:-1
 why:-9
 why~ ?:-4
 why~ does:-4
 why~ i:-6
 why~ it:-6
 why~ its:-6
 why~ the:-7
 why~F:-2
 width:-4
 wife:-2
 wifes:-3
 wife~ likes:-6
 wife~ says:3
 will:-7
 will~ ask:-1
 will~ be:-8
 will~ climb:-6
 will~ do:-6
 will~ it:-3
 will~ need:-1
 will~ that:-3
 will~ the:-5
 will~ this:-2
 wind:-5
 window:-10
 windowsill:2
 window~ open:-8
 winter:-4
 winter~ and:3
 winter~ bar:-1
 winter~ hands:-7
 winter~ i:-3
 wipe:-4
 wiped:-1
 wire:-6
 wish:3
 within:-8
 within~t:-6
 without:6
 without~ a:-11
 without~ it:1
 without~ my:-1
 without~ the:1
 without~F:-1
 with~ a:-2
 with~ all:-7
 with~ an:-5
 with~ bak:-4
 with~ both:-3
 with~ everyth:5
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-4
 with~ it:-1
 with~ its:-3
 with~ me:2
 with~ more:4
 with~ my:-8
 with~ no:-1
 with~ noth:5
 with~ one:4
 with~ only:-8
 with~ some:2
 with~ that:2
 with~ the:3
 with~ this:2
 with~ us:-5
 with~ wet:-3
 with~ what:1
 with~%:7
 with~0:-3
 with~<:-2
 with~=:-2
 with~>:-6
 with~A:2
 with~C:1
 with~F:-7
 with~I:-5
 with~L:-7
 with~N:1
 with~S:-7
 with~W:2
 with~X:1
 with~e:-8
 with~l:-8
 with~v:-2
 with~w:3
 woman:-11
 woman~ at:-2
 women:-3
 wonder:6
 wonky:-7
 wont:-2
 wood:-6
 wooden:-3
 wooden~ box:-2
 wooden~ mould:-7
 wooden~ one:-6
 wooden~ spoon:1
 wood~ stove:-5
 words:-6
 word~ for:-7
 work:-1
 works:-8
 worksheet:-4
 workshop:-3
 worktop:-2
 work~ ?:-2
 work~ in:3
 work~ it:3
 work~ out:-2
 work~ with:2
 worri:3
 worry:1
 worry~ is:2
 worth~ of:5
 would:-2
 wouldnt:4
 wouldnt~ dissolve:7
 would~ a:-2
 would~ be:-2
 would~ do:-7
 would~ have:-2
 would~ like:3
 would~ love:2
 would~ not:-6
 would~ say:1
 would~ take:2
 would~ the:-8
 would~ you:2
 wrap:-9
 wrapp:-11
 wrapper:-6
 wrapp~ in:-5
 wrapp~ it:-4
 wrist:-5
 writ:-4
 write:-6
 write~ down:-3
 write~ it:-1
 write~ the:-7
 write~ up:-4
 written:3
 written~ ?:-3
 written~ on:-6
 wrong~ ?:-5
 wrong~ with:-6
 wrote~ ::-4
 wrote~ in:1
 wrote~ it:3
 wrote~ on:-6
 wrote~ that:-5
 wrote~ this:-2
 wrote~F:5
 wt:-8
 w~ a:-8
 w~ my:-2
 w~ the:2
 w~ w:2
 w~=:-3
 x:2
 xmas:3
 x~0:3
 x~F:-8
 yall:-6
 yard:-8
 year:-6
 years:-6
 years~ ago:-2
 year~ and:1
 year~ i:-8
 year~ in:-5
 year~ is:4
 year~0:-5
 yellow:-8
 yes:-4
 yesterday:-5
 yes~ i:-1
 yes~ its:-7
 yes~ no:-3
 yes~ or:-1
 yes~ the:-1
 yet:7
 yield:1
 yield~0:2
 you:-3
 youd:-3
 youll:-3
 youll~ want:1
 young:-4
 your:-9
 youre:-9
 yours:-2
 your~ arm:-2
 your~ own:2
 your~ skin:-5
 your~A:-3
 your~F:-3
 youve:-10
 you~ ?:-2
 you~ all:-9
 you~ and:-4
 you~ are:-4
 you~ ask:2
 you~ asked:-2
 you~ call:-9
 you~ can:-3
 you~ cant:-6
 you~ check:-5
 you~ could:-10
 you~ cut:-3
 you~ do:1
 you~ dont:-10
 you~ feel:-4
 you~ for:-6
 you~ get:-5
 you~ go:-6
 you~ know:4
 you~ like:-6
 you~ look:-3
 you~ lot:-2
 you~ make:-6
 you~ need:-6
 you~ pour:-7
 you~ put:-6
 you~ say:-1
 you~ see:3
 you~ should:3
 you~ start:-4
 you~ tell:3
 you~ think:-2
 you~ to:-4
 you~ trust:-1
 you~ use:-3
 you~ wait:-4
 you~ want:-9
 you~ weigh:-6
 you~ will:2
 you~ wont:1
 you~ work:4
 zap:-8
 zapp:4
 zappy:-5
 zap~ test:-3
 zero:4
 zero~ the:6
 üf:-8
%%:-2
%0:-8
%:7
%<:-5
%=:-1
%>:-8
%A:6
%F:-2
%K:-6
%N:2
%S:-5
%W:1
%X:2
%b:-1
%l:-2
%t:-6
%w:2
%~ ?:-2
%~ and:-4
%~ by:2
%~ extra:7
%~ flak:3
%~ for:9
%~ in:-3
%~ is:-2
%~ less:-3
%~ liquid:6
%~ off:-1
%~ on:4
%~ or:1
%~ over:4
%~ pure:-5
%~ purity:-4
%~ sf:-4
%~ so:5
%~ solution:-3
%~ superfat:3
%~ with:4
%~=:-5
%~A:5
%~F:-5
%~K:-6
%~N:1
%~W:-4
%~X:3
0%:-5
00:-5
0:4
0<:-4
0=:2
0>:-2
0A:-1
0C:4
0F:-1
0I:4
0K:-8
0M:6
0N:4
0S:-3
0W:4
0X:-5
0b:-2
0d:-3
0l:-3
0r:-3
0t:-6
0v:-7
0w:-6
0~ =:-8
0~ ?:3
0~ a:-12
0~ after:2
0~ all:4
0~ and:-1
0~ are:3
0~ as:7
0~ at:-1
0~ b:-7
0~ bar:-7
0~ bars:-5
0~ batch:-4
0~ because:9
0~ before:2
0~ big:-3
0~ block:2
0~ both:-5
0~ bottl:-5
0~ bucket:-5
0~ but:-1
0~ by:1
0~ c:-4
0~ cakes:-2
0~ can:-7
0~ caviti:-6
0~ children:-7
0~ comment:-3
0~ cut:3
0~ degre:-3
0~ drops:-7
0~ empty:2
0~ evening:-4
0~ except:5
0~ famili:-6
0~ fat:-3
0~ fats:-10
0~ for:-8
0~ from:2
0~ full:-7
0~ gives:-6
0~ goats:-9
0~ goes:-2
0~ good:2
0~ group:-5
0~ guest:-4
0~ had:-10
0~ i:6
0~ if:-3
0~ in:-2
0~ into:5
0~ is:2
0~ it:-2
0~ jars:-1
0~ kitchen:-5
0~ lather:-3
0~ left:-3
0~ like:-4
0~ little:-7
0~ loaf:-3
0~ loav:-2
0~ lyes:-8
0~ made:-8
0~ more:-6
0~ my:5
0~ n:-1
0~ night:-4
0~ no:4
0~ not:5
0~ now:1
0~ of:2
0~ off:-1
0~ oil:-6
0~ oils:-4
0~ on:7
0~ once:2
0~ one:-3
0~ or:4
0~ out:3
0~ p:-8
0~ packet:-1
0~ packs:1
0~ pcs:-6
0~ people:-7
0~ per:-4
0~ percent:5
0~ piec:-1
0~ please:9
0~ plus:2
0~ pour:-5
0~ pupil:-2
0~ right:-3
0~ scal:-6
0~ she:-1
0~ silicone:-2
0~ since:4
0~ slic:-5
0~ small:-7
0~ so:-6
0~ someth:3
0~ spoon:2
0~ still:-8
0~ superfat:6
0~ that:-2
0~ thats:3
0~ the:4
0~ then:3
0~ there:1
0~ thing:-8
0~ this:3
0~ times:-2
0~ tins:-3
0~ to:1
0~ towel:-7
0~ until:-7
0~ w:5
0~ was:-4
0~ weigh:-4
0~ went:4
0~ were:2
0~ when:3
0~ which:-3
0~ winter:-2
0~ with:-9
0~ x:2
0~ zap:-4
0~ ×:-7
0~0:-2
0~A:-6
0~F:-3
0~N:-2
0~S:1
0~W:-3
0~X:4
0~b:-12
0~t:-5
0~w:-3
<%:2
<0:-2
<:3
<<:-3
<=:-5
<>:-3
<A:5
<C:3
<F:2
<I:-10
<K:9
<L:5
<N:-4
<S:-2
<W:-5
<X:1
<d:-4
<l:-7
<v:-3
<w:-2
<~ +:-6
<~ and:5
<~ because:2
<~ i:-7
<~ in:-2
<~ less:-3
<~ more:8
<~ of:2
<~ short:2
<~ the:6
<~C:3
<~F:4
<~I:-4
<~L:-4
<~S:-2
<~W:-6
<~X:-6
=%:-11
=0:6
=:-4
=<:-4
==:-3
=>:-2
=A:-2
=F:-4
=I:-3
=K:-1
=L:-1
=N:5
=S:-1
=W:-2
=X:-1
=b:-4
=d:-2
=e:-1
=r:-5
=t:-3
=v:-7
=w:-5
=~ +:-5
=~ ::3
=~ =:-8
=~ after:-1
=~ and:-7
=~ as:2
=~ at:-4
=~ bag:-8
=~ block:-7
=~ by:-1
=~ check:-2
=~ clean:-3
=~ cold:-1
=~ did:-2
=~ dissolv:-6
=~ does:-2
=~ for:-4
=~ free:-7
=~ from:-3
=~ goes:-3
=~ good:-1
=~ i:-7
=~ im:-7
=~ in:-4
=~ into:-4
=~ it:-6
=~ its:1
=~ melt:-5
=~ mk:-5
=~ no:-5
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:4
=~ so:-4
=~ superfat:-7
=~ that:-7
=~ then:-5
=~ too:-3
=~ with:2
=~%:-6
=~0:6
=~<:-5
=~=:-2
=~A:-3
=~F:-3
=~L:-4
=~W:-3
=~X:-3
=~t:-1
>%:-2
>0:-6
>:-3
><:-3
>=:-2
>>:-6
>A:-1
>F:-2
>K:-6
>L:1
>W:-5
>e:-10
>l:-4
>t:-2
>w:-5
>~ i:-7
>~ in:-2
>~ is:-5
>~ of:-4
>~ oils:-2
>~ so:-6
>~ the:-6
>~A:-4
>~F:3
>~L:-2
>~W:-4
A%:4
A0:5
A=:-3
A>:-1
AA:2
AB:4
AC:-6
AF:4
AI:-7
AL:2
AN:-8
AS:-3
AW:-2
Ab:1
Ad:1
Ae:1
Al:-8
Ar:-8
At:-4
Aw:-4
A~ +:-2
A~ ::5
A~ =:1
A~ ?:-5
A~ a:-7
A~ about:-4
A~ all:1
A~ alright:-5
A~ and:-2
A~ as:7
A~ at:-5
A~ bag:2
A~ be:-1
A~ because:-5
A~ before:-6
A~ but:-2
A~ by:-1
A~ came:-5
A~ can:-1
A~ check:-7
A~ comes:5
A~ cool:2
A~ correct:-9
A~ dissolv:-2
A~ does:-8
A~ down:6
A~ figure:4
A~ fine:-3
A~ fit:-6
A~ fits:-4
A~ for:1
A~ from:5
A~ g:-8
A~ gets:-5
A~ goes:-9
A~ good:-7
A~ got:9
A~ had:2
A~ half:-7
A~ has:6
A~ heavy:2
A~ here:6
A~ i:4
A~ if:5
A~ into:-5
A~ is:5
A~ it:4
A~ its:6
A~ jug:-4
A~ left:-4
A~ like:-4
A~ look:1
A~ looks:-3
A~ n:-1
A~ no:-7
A~ not:5
A~ of:1
A~ ok:-6
A~ okay:-4
A~ on:-8
A~ one:-7
A~ only:2
A~ or:-4
A~ over:-7
A~ paste:3
A~ per:3
A~ please:-8
A~ pls:-4
A~ pot:6
A~ ready:-6
A~ real:-9
A~ right:-5
A~ row:-3
A~ sensible:-5
A~ she:-7
A~ slow:-6
A~ so:3
A~ soap:-2
A~ sprinkl:-4
A~ still:-6
A~ that:-7
A~ the:-5
A~ then:-3
A~ there:2
A~ to:-2
A~ too:-9
A~ tub:4
A~ up:5
A~ was:-1
A~ weigh:7
A~ went:2
A~ when:2
A~ where:4
A~ which:-1
A~ with:-2
A~ wrong:-5
A~ you:6
A~%:-5
A~<:1
A~=:-2
A~>:-6
A~A:-4
A~F:-2
A~L:2
A~W:1
A~d:-5
A~e:-3
A~r:-7
A~t:6
A~v:-2
B0:-4
B:3
BF:5
B~ and:-9
B~ in:-1
B~ so:-5
C%:-7
C:6
CA:4
Cv:5
Cw:1
C~ at:4
C~ in:6
C~ is:-5
C~%:-7
C~<:-5
F%:2
F:1
F<:4
F=:-3
F>:-2
FA:-3
FB:4
FI:-5
FK:-5
FL:-1
FN:5
FS:-10
FT:-6
FU:1
FX:2
Fb:2
Fd:-3
Fe:1
Fl:-6
Fr:6
Ft:-4
Fv:-7
Fw:1
F~ +:3
F~ ::3
F~ =:1
F~ ?:-6
F~ add:3
F~ after:3
F~ again:2
F~ all:1
F~ alone:-3
F~ altogether:-3
F~ and:1
F~ are:5
F~ as:4
F~ at:2
F~ back:5
F~ bar:-4
F~ bars:-12
F~ batch:-7
F~ because:7
F~ beef:-5
F~ before:-5
F~ block:-3
F~ bottle:-7
F~ but:-2
F~ came:1
F~ can:-5
F~ clean:-3
F~ cold:-5
F~ comes:-10
F~ could:2
F~ count:-8
F~ does:-6
F~ down:8
F~ extra:6
F~ figure:5
F~ fills:-7
F~ first:-6
F~ for:-3
F~ free:-6
F~ from:-6
F~ g:-7
F~ gent:-6
F~ gives:-7
F~ go:-3
F~ goes:-11
F~ gone:-3
F~ got:8
F~ grams:-6
F~ had:-2
F~ half:-2
F~ has:-4
F~ here:2
F~ i'd:3
F~ i:2
F~ if:-7
F~ im:6
F~ in:1
F~ instead:5
F~ into:-3
F~ it:5
F~ its:2
F~ ive:8
F~ jar:-3
F~ jug:4
F~ keeps:-6
F~ l:-3
F~ last:-10
F~ like:2
F~ line:6
F~ look:3
F~ looks:-3
F~ makes:-5
F~ melt:-10
F~ melts:-5
F~ my:3
F~ n:2
F~ never:9
F~ next:-6
F~ no:-7
F~ not:1
F~ now:7
F~ of:-1
F~ on:-7
F~ once:-6
F~ one:-12
F~ only:1
F~ or:-9
F~ out:2
F~ over:-5
F~ oyl:-4
F~ packet:6
F~ paste:-7
F~ ran:2
F~ read:1
F~ real:-6
F~ render:-6
F~ right:-6
F~ rspo:-8
F~ says:-4
F~ second:-1
F~ sets:-4
F~ should:3
F~ since:2
F~ smell:-10
F~ so:5
F~ soap:-5
F~ soaps:-7
F~ stand:1
F~ stay:9
F~ stays:-2
F~ still:3
F~ stirr:-2
F~ strain:4
F~ stuck:2
F~ takes:-8
F~ than:2
F~ that:-5
F~ thats:3
F~ the:-2
F~ there:3
F~ thicken:-8
F~ this:-2
F~ through:-5
F~ tin:-2
F~ to:4
F~ together:2
F~ too:-6
F~ trac:-7
F~ tub:-5
F~ turn:8
F~ twice:2
F~ until:8
F~ up:2
F~ used:-5
F~ w:2
F~ warm:-5
F~ was:-1
F~ weigh:-5
F~ well:1
F~ went:-2
F~ were:-1
F~ when:-1
F~ which:-1
F~ while:4
F~ will:-6
F~ would:1
F~ wouldnt:-2
F~ you:5
F~%:1
F~0:4
F~<:2
F~=:-2
F~>:-1
F~A:-4
F~F:-4
F~N:7
F~W:-2
F~d:-4
F~e:-1
F~t:-9
I0:3
I:2
IA:-2
II:1
IL:1
Ib:-7
Id:5
Iw:-7
I~ +:-3
I~ ::2
I~ and:-4
I~ bath:-1
I~ first:-6
I~ had:8
I~ in:-6
I~ is:-2
I~ it:6
I~ round:-9
I~ so:-7
I~ tray:1
I~ was:6
I~<:1
K%:-7
K0:-10
K:2
K=:-2
K>:-7
KA:-7
KF:-7
KL:-3
KW:-3
Kd:-6
Kr:3
Kt:-3
K~ ::-5
K~ and:-4
K~ g:-6
K~ in:-3
K~ into:4
K~ is:3
K~ mixed:4
K~ my:-9
K~ of:-6
K~ on:5
K~ was:-3
K~%:-8
K~>:-6
K~A:-1
L0:-1
L:2
L<:-6
L=:-1
L>:3
LA:-5
LF:2
LI:3
LL:3
LN:2
LS:6
LU:-4
LW:2
LX:-3
Lb:2
Le:2
Ll:-6
Lt:-3
Lv:-5
Lw:-2
L~ ::2
L~ a:1
L~ after:-1
L~ bar:-6
L~ bars:-5
L~ batch:-7
L~ because:2
L~ boil:2
L~ by:-1
L~ flat:5
L~ for:-2
L~ from:10
L~ frozen:-8
L~ goes:-7
L~ i:-1
L~ in:-1
L~ instead:-8
L~ is:1
L~ no:-10
L~ of:7
L~ on:4
L~ out:7
L~ over:3
L~ pot:-6
L~ same:7
L~ so:1
L~ soap:-7
L~ stage:-3
L~ straight:-2
L~ thaw:-5
L~ the:5
L~ to:3
L~ towel:2
L~ was:4
L~ went:3
L~ which:6
L~ with:4
L~0:-1
L~>:-2
L~X:-5
L~b:9
L~l:-10
L~t:-3
L~w:1
M0:2
M:3
MA:4
M~ and:-4
M~ in:4
M~ is:1
M~ soap:-8
M~ was:1
N0:4
N:9
N<:-2
NA:-4
NL:3
NN:-2
Nb:5
Nl:2
Nt:-9
Nw:4
N~ after:-1
N~ and:-11
N~ at:-3
N~ because:3
N~ for:-1
N~ from:6
N~ i:8
N~ if:2
N~ in:2
N~ instead:-1
N~ is:-3
N~ it:10
N~ or:-6
N~ same:7
N~ since:5
N~ so:1
N~ that:-2
N~ the:8
N~ to:3
N~ was:-5
N~ where:7
N~ would:-7
N~N:-2
S%:-8
S0:-5
S:-5
S<:-4
SF:-1
SL:-4
SN:8
SS:-5
SX:-3
Sd:-1
St:-4
Sv:-5
Sw:-5
S~ ::-4
S~ a:-4
S~ and:3
S~ as:-1
S~ at:-5
S~ because:2
S~ blend:-4
S~ fades:-3
S~ for:-5
S~ from:-6
S~ goes:-5
S~ i:-6
S~ in:1
S~ is:6
S~ leav:-6
S~ mould:-7
S~ no:-2
S~ once:-2
S~ only:2
S~ pour:-2
S~ powder:-5
S~ smell:-6
S~ spots:-7
S~ the:-6
S~ then:-5
S~ was:1
S~ when:-5
S~ which:-5
S~0:-5
S~<:-4
S~S:-3
S~w:-5
T0:-3
T:-9
TF:-3
T~ of:-4
T~ oils:-3
U:5
UF:2
Ut:-2
U~ and:1
U~ i:-8
U~ in:3
U~ look:-1
U~ stage:-4
W%:-7
W0:7
W:2
W<:5
W=:-3
W>:-3
WA:-1
WC:-1
WF:-5
WI:-2
WL:6
WS:-3
WW:2
Wb:3
Wd:-5
We:-3
Wl:-1
Wr:1
Wt:1
Wv:-5
W~ +:-2
W~ =:-7
W~ ?:-10
W~ a:7
W~ after:-3
W~ all:-2
W~ and:-3
W~ as:4
W~ at:3
W~ because:4
W~ before:3
W~ boil:-2
W~ but:1
W~ by:-2
W~ clear:-5
W~ does:-5
W~ down:3
W~ first:-4
W~ for:-4
W~ from:-6
W~ g:-8
W~ got:-4
W~ here:-5
W~ i:6
W~ in:-1
W~ into:-9
W~ is:2
W~ it:3
W~ let:-4
W~ like:1
W~ looks:-6
W~ makes:-9
W~ never:-4
W~ on:-9
W~ or:5
W~ out:-9
W~ outdoor:-1
W~ outside:-1
W~ since:4
W~ so:-3
W~ that:-4
W~ the:3
W~ then:-1
W~ to:-10
W~ too:8
W~ was:8
W~ went:4
W~ when:7
W~ which:5
W~ would:-6
W~0:2
W~=:-3
W~A:-5
W~e:-1
W~r:-6
W~t:-3
W~v:-3
X%:2
X:-3
X<:1
X=:-7
X>:-2
XA:-3
XC:-7
XF:-3
XL:3
XN:8
XS:-2
XW:2
XX:-1
Xb:1
Xl:3
Xt:-3
Xv:-3
Xw:-1
X~ ?:-5
X~ a:-6
X~ and:2
X~ at:-6
X~ bar:2
X~ bars:-6
X~ came:-4
X~ dissolv:-9
X~ fine:-3
X~ for:2
X~ from:-8
X~ goes:-3
X~ ground:-8
X~ i:4
X~ in:-1
X~ is:-4
X~ it:-7
X~ makes:-1
X~ no:-4
X~ of:-8
X~ so:-4
X~ the:-4
X~ this:3
X~ to:-9
X~ was:2
X~ went:1
X~0:2
X~<:-7
X~L:2
X~W:-3
X~v:-5
X~w:-5
^ *:-7
^ ::3
^ =:-5
^ a:-2
^ about:11
^ add:1
^ added:8
^ after:2
^ all:2
^ also:-4
^ alway:4
^ am:-4
^ an:5
^ and:-7
^ answer:-1
^ any:-5
^ anyone:-8
^ anyth:-4
^ are:-3
^ as:4
^ ask:-9
^ at:-1
^ attempt:-5
^ b:-8
^ back:-7
^ bar:-5
^ bars:-7
^ base:-4
^ basic:-5
^ batch:-8
^ be:-6
^ because:-1
^ been:-7
^ before:-9
^ between:6
^ big:-8
^ bit:3
^ blend:-6
^ blender:-7
^ blue:-5
^ boil:2
^ bonsoir:-4
^ book:-10
^ both:-7
^ bottle:10
^ bought:-7
^ box:-5
^ bring:-2
^ bubbl:-7
^ but:-10
^ by:-3
^ c:-5
^ came:2
^ castile:-7
^ chang:4
^ check:-11
^ christma:-3
^ clear:1
^ cold:-4
^ combine:-3
^ comment:-2
^ confetti:-4
^ cook:-3
^ cool:-3
^ copi:-4
^ correction:9
^ cost:-9
^ could:-3
^ couldnt:9
^ cover:-6
^ crock:-3
^ crockpot:-5
^ cure:-3
^ cured:-5
^ cut:-4
^ d:-5
^ dad:2
^ dads:-4
^ date:-2
^ day:-9
^ did:-3
^ didnt:-1
^ dissolv:-5
^ dissolve:-2
^ do:-3
^ does:-3
^ dog:1
^ done:-4
^ dont:-12
^ doubl:3
^ dropp:-1
^ e:-4
^ each:1
^ earlier:-9
^ edit:1
^ ended:5
^ enough:-6
^ entry:1
^ even:-2
^ every:-5
^ everyone:-8
^ everyth:3
^ expect:-7
^ export:-4
^ f:-6
^ fat:-7
^ fats:-10
^ fill:-6
^ fills:-4
^ final:1
^ fine:-3
^ first:-3
^ for:3
^ forgot:-1
^ found:8
^ freeze:-6
^ friend:-2
^ from:-2
^ g:-6
^ gave:-4
^ gel:-7
^ gell:3
^ give:-7
^ glov:-5
^ goat:-7
^ goes:-3
^ goggl:-5
^ going:2
^ gonna:5
^ good:-5
^ got:-8
^ grams:-6
^ gran:2
^ grandma:-5
^ grandmother:-1
^ grandpa:4
^ granny:-5
^ grans:-2
^ grat:-6
^ greeting:-4
^ had:4
^ half:2
^ hallo:-2
^ hand:2
^ handout:-4
^ hard:-5
^ has:-5
^ have:-8
^ he:-5
^ heat:-6
^ hello:-3
^ help:6
^ her:1
^ here:-8
^ heres:-7
^ hers:-6
^ hes:-6
^ hey:-5
^ hi:1
^ his:-7
^ hiya:2
^ hola:-2
^ hope:-2
^ how:-10
^ hp:-4
^ hubby:-1
^ i'd:3
^ i:-2
^ if:-9
^ ignore:1
^ ill:-1
^ im:3
^ in:-6
^ ingredient:-3
^ instead:9
^ into:-2
^ is:-7
^ it:2
^ item:-3
^ itll:-2
^ its:-3
^ ive:-6
^ jug:6
^ just:1
^ keep:4
^ kids:-6
^ kind:1
^ knock:1
^ label:-10
^ last:-7
^ lather:-5
^ laundry:-6
^ leave:-3
^ left:-2
^ leftover:-8
^ let:-1
^ lid:2
^ like:-3
^ line:-5
^ liquid:-5
^ list:-7
^ log:-6
^ lol:-6
^ long:-4
^ look:-4
^ looks:-4
^ lost:-7
^ lot:-6
^ love:-5
^ lye's:5
^ m:-5
^ made:3
^ make:7
^ makes:-2
^ many:-3
^ market:-6
^ meanwhile:-1
^ mind:-4
^ mine:-6
^ mines:3
^ mix:-8
^ mixed:-3
^ mold:-7
^ morn:-6
^ mould:-5
^ mum:-5
^ mums:6
^ must:-3
^ my:-3
^ n:-8
^ name:-3
^ nb:2
^ need:-5
^ nephew:1
^ never:-3
^ new:-1
^ next:-11
^ nice:-5
^ no:5
^ nobody:-3
^ none:-7
^ normal:-1
^ not:1
^ notebook:-6
^ notes:-2
^ noth:-12
^ now:1
^ number:-2
^ o:-5
^ oat:-5
^ of:-1
^ oil:-6
^ oils:-3
^ ok:-2
^ okay:-4
^ old:-4
^ on:-7
^ once:-3
^ one:1
^ only:3
^ or:-4
^ order:1
^ other:-6
^ our:-3
^ ours:-6
^ out:2
^ outside:-5
^ oven:-3
^ page:-4
^ passt:-3
^ past:-3
^ paste:1
^ people:-5
^ per:1
^ ph:-5
^ phase:-3
^ phone:-2
^ photo:-9
^ plain:-6
^ plan:-4
^ plann:-7
^ please:1
^ pls:-8
^ plus:-8
^ post:4
^ pot:7
^ pour:-1
^ prep:-2
^ press:-5
^ pretty:-1
^ print:-9
^ ps:5
^ pull:5
^ purity:7
^ put:-4
^ q:-6
^ question:-7
^ quick:-6
^ rain:5
^ ran:5
^ re:-4
^ read:3
^ reader:2
^ ready:-4
^ recipe:-6
^ remark:-7
^ render:-3
^ replac:-1
^ rest:-4
^ result:-5
^ right:-5
^ room:-5
^ safe:-4
^ same:1
^ sat:-4
^ scal:4
^ scale:6
^ scoop:-4
^ scrap:4
^ second:2
^ sells:-4
^ set:-4
^ sf:-2
^ shav:-3
^ shave:-3
^ she:-5
^ shes:-4
^ should:-6
^ since:4
^ sis:2
^ sister:-1
^ slow:-4
^ smell:-8
^ snow:2
^ so:-4
^ soap:-6
^ soft:-4
^ sold:-8
^ some:2
^ somebody:-1
^ someone:-2
^ somewhere:2
^ sound:-4
^ source:6
^ spill:-3
^ split:2
^ spoon:-3
^ sry:-8
^ stamp:-5
^ start:-7
^ stick:-5
^ still:-2
^ stir:-4
^ stirr:-5
^ strain:3
^ student:3
^ subject:-3
^ sum:-4
^ sunday:-5
^ superfat:1
^ swap:4
^ swapp:4
^ swirl:-7
^ switch:-5
^ take:-3
^ teacher:1
^ tell:-9
^ test:-7
^ text:-6
^ thank:-7
^ thats:-4
^ the:-1
^ then:-1
^ ther:-3
^ there:-2
^ these:-1
^ they:-10
^ third:-3
^ this:1
^ those:3
^ thought:-3
^ threw:8
^ thx:-3
^ tip:-4
^ title:-5
^ today:1
^ tonight:-4
^ too:-2
^ took:3
^ total:-4
^ towel:-4
^ trac:1
^ trace:-4
^ translat:-2
^ tried:-4
^ try:-3
^ tub:-7
^ turn:-3
^ unit:-3
^ unmould:-6
^ update:1
^ use:1
^ used:4
^ using:-8
^ v:1
^ version:-11
^ very:-5
^ wait:4
^ want:3
^ warm:-7
^ was:-4
^ wash:-8
^ we:1
^ wed:1
^ week:-4
^ weigh:-6
^ weight:-8
^ well:-6
^ went:2
^ were:2
^ weve:-8
^ what:-8
^ whats:-8
^ when:-8
^ where:-1
^ which:-8
^ while:-2
^ who:-3
^ whoever:-4
^ whole:3
^ whos:-3
^ why:-8
^ will:-4
^ with:-5
^ work:-3
^ worksheet:-4
^ workshop:-4
^ would:-1
^ wrapp:-9
^ write:2
^ written:4
^ wrote:-4
^ x:-9
^ years:2
^ yes:-11
^ yesterday:-6
^ yield:1
^ you:-8
^ youll:2
^ zap:-4
^%:-4
^0:-5
^=:-6
^>:-10
^C:-12
^F:1
^I:-1
^K:-4
^L:1
^M:1
^N:-2
^S:-8
^T:-6
^U:2
^X:-4
^b:-1
^d:-4
^e:-9
^l:7
^r:3
^v:-1
^w:-3
any:-2
b%:-3
b0:3
b:2
bA:1
bF:-3
bL:9
bN:6
bW:9
bb:-4
bt:-4
bw:-1
b~ ::-1
b~ ?:10
b~ a:-3
b~ after:-7
b~ and:-6
b~ as:-7
b~ bars:-7
b~ because:-4
b~ before:3
b~ but:7
b~ by:7
b~ fine:-3
b~ for:5
b~ i:3
b~ if:5
b~ in:-1
b~ is:7
b~ it:3
b~ my:3
b~ not:-6
b~ of:-1
b~ on:-4
b~ or:7
b~ right:-9
b~ still:3
b~ the:4
b~ then:6
b~ too:3
b~ was:4
b~ x:-8
b~0:-10
b~L:2
d%:-5
d0:-7
d:-6
d=:-3
dA:-5
dF:-7
dI:-7
dK:-4
dL:-7
dX:-2
db:-3
dd:-5
dt:-1
dv:-1
dw:-1
d~ ::-1
d~ ?:-3
d~ and:-5
d~ at:-3
d~ blend:-1
d~ both:-2
d~ by:-4
d~ for:-6
d~ here:-2
d~ in:-4
d~ it:-7
d~ no:-4
d~ of:-1
d~ oils:-1
d~ or:-2
d~ pour:-2
d~ so:-9
d~ stirr:-2
d~ the:-5
d~ then:-7
d~ trace:-1
d~ when:-7
d~A:-6
d~t:-1
e%:-6
e0:3
e:3
e=:-2
e>:-5
eA:-1
eF:-1
eL:1
eN:9
eW:-3
eX:6
eb:1
ee:-5
et:3
e~ +:6
e~ all:1
e~ and:-4
e~ as:3
e~ but:11
e~ g:-10
e~ grams:-6
e~ in:7
e~ is:6
e~ minus:7
e~ of:3
e~ on:-3
e~ or:7
e~ was:11
e~ with:12
e~A:-1
e~F:-3
e~W:-3
l%:-5
l0:5
l:-3
l=:-5
l>:-4
lA:3
lF:-7
lL:-3
lN:3
lW:-4
lX:-5
ll:-6
long:1
lv:-6
lw:-4
l~ and:-6
l~ as:-7
l~ for:4
l~ i:-7
l~ in:-9
l~ is:-3
l~ of:-1
l~ on:1
l~ right:-1
l~ the:-7
l~ was:-5
l~ went:2
l~ with:2
l~L:4
l~t:-5
no figure:-6
no name:-6
r%:-7
r0:3
r:4
r>:-5
rA:2
rF:9
rK:3
rW:-4
rt:-6
r~ as:-10
r~ by:2
r~ the:-1
r~K:3
short:-6
t%:-3
t0:-2
t:-5
t<:7
t=:-3
t>:6
tA:-2
tF:-4
tK:-4
tL:-3
tN:-4
tS:-2
tU:-6
tX:-5
tb:-2
td:-1
te:-7
tl:-9
tt:-3
tv:-2
tw:-3
t~ ::2
t~ ?:-7
t~ a:-5
t~ add:-2
t~ added:2
t~ after:-5
t~ ago:-6
t~ all:-6
t~ and:-2
t~ at:-4
t~ because:-10
t~ before:3
t~ blend:-3
t~ both:-3
t~ but:1
t~ by:-5
t~ can:-4
t~ cook:-3
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-1
t~ did:-4
t~ each:-1
t~ edges:-5
t~ flat:-5
t~ for:1
t~ from:-8
t~ gel:-3
t~ i:-3
t~ if:-4
t~ in:-10
t~ into:-2
t~ is:-7
t~ it:-7
t~ its:2
t~ ive:-5
t~ later:-8
t~ lid:-6
t~ loaf:-2
t~ long:-2
t~ mash:-2
t~ melt:4
t~ mine:-7
t~ mix:-5
t~ mould:-2
t~ my:-5
t~ no:-4
t~ now:-5
t~ of:3
t~ off:-2
t~ oils:-2
t~ old:1
t~ on:-7
t~ or:-4
t~ paste:-9
t~ pot:3
t~ pour:-4
t~ ready:-4
t~ rest:-8
t~ since:-5
t~ so:-1
t~ still:-5
t~ stir:-1
t~ stirr:-5
t~ the:-5
t~ then:-5
t~ they:-3
t~ till:-3
t~ to:-6
t~ trace:-5
t~ under:-1
t~ unmould:-3
t~ until:-4
t~ used:-3
t~ wait:-2
t~ was:-6
t~ we:-7
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:1
t~ yes:2
t~ zap:-1
t~0:-1
t~=:-2
t~A:-4
t~F:-2
t~K:-1
t~L:-2
t~S:-1
t~U:-4
t~W:1
t~X:-6
t~b:-5
t~d:-2
t~t:-5
v0:-3
v:1
v=:2
vA:3
vC:1
vF:-3
vK:5
vL:3
vN:9
vS:-3
vW:6
vX:-4
vb:-3
vd:-1
vl:-6
vt:3
vv:3
vw:1
v~ a:-5
v~ and:2
v~ at:-3
v~ bottle:-1
v~ can:-9
v~ for:-4
v~ i:1
v~ in:-3
v~ is:-7
v~ of:2
v~ one:-4
v~ or:-2
v~ pot:-10
v~ so:-3
v~ to:4
v~C:3
v~S:-1
v~W:1
v~X:-1
w%:-6
w0:2
w<:-13
w=:-6
w>:4
wA:-2
wC:6
wF:-1
wI:-3
wL:-1
wN:1
wS:-6
wW:-2
wX:2
wb:3
wd:5
wl:-13
wt:-10
wv:-1
w~ a:3
w~ after:-5
w~ and:-1
w~ as:-6
w~ at:-6
w~ cubes:-7
w~ dissolv:1
w~ empty:-2
w~ for:-2
w~ fresh:-7
w~ from:-9
w~ goes:-8
w~ in:-4
w~ instead:-9
w~ loaf:-3
w~ more:-3
w~ mould:3
w~ no:-1
w~ of:2
w~ on:-3
w~ one:-2
w~ or:-3
w~ out:-8
w~ per:3
w~ so:-1
w~ the:-2
w~ to:-5
w~ together:-8
w~ was:5
w~ wet:-7
w~ when:-1
w~0:2
w~C:3
w~I:2
w~L:-9
w~N:-1
w~S:-4
w~X:-6
w~w:-3`;
